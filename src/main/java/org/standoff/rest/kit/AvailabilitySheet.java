package org.standoff.rest.kit;

import java.util.Arrays;
import java.util.List;
import org.standoff.answers.kit.AvailabilityAnswer;
import org.standoff.rest.media.CsvTable;

/** What is free as a sheet: a row a line and house. */
final class AvailabilitySheet {
  private AvailabilitySheet() {}

  static String csv(AvailabilityAnswer answer) {
    CsvTable table =
        new CsvTable(
            List.of(
                "line",
                "microphone",
                "quantity",
                "matched",
                "house",
                "enough",
                "free_count",
                "free_group_count",
                "unit_count",
                "next_free_from",
                "next_free_to",
                "substitute"));
    for (AvailabilityAnswer.LineFound line : answer.lines()) {
      for (AvailabilityAnswer.LineAtHouse at : line.houses()) {
        table.row(
            Arrays.asList(
                line.line(),
                line.microphone(),
                line.quantity(),
                line.matched(),
                at.house(),
                at.enough(),
                at.freeCount(),
                at.freeGroupCount(),
                at.unitCount(),
                at.nextFree().map(AvailabilityAnswer.Stretch::from).orElse(null),
                at.nextFree().map(AvailabilityAnswer.Stretch::to).orElse(null),
                at.substitutes().isEmpty() ? null : at.substitutes().get(0).microphone()));
      }
    }
    return table.text();
  }
}
