package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.AlignAnswer;
import org.standoff.answers.floor.AlignAnswer.ArrivalLine;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** Arrivals for sheets and for scripts that read lines. */
final class AlignmentSheet {
  private static final List<String> COLUMNS =
      List.of(
          "microphone",
          "path_m",
          "arrival_ms",
          "after_first_ms",
          "after_first_samples",
          "drift_samples",
          "level_db_spl",
          "invert_by_side",
          "invert_by_low_sum");

  private AlignmentSheet() {}

  /** A row a microphone. */
  static String csv(AlignAnswer answer) {
    CsvTable table = new CsvTable(COLUMNS);
    answer.arrivals().forEach(arrival -> table.row(cells(arrival)));
    return table.text();
  }

  /** A line a microphone. */
  static String lines(AlignAnswer answer) {
    StringBuilder lines = new StringBuilder();
    for (ArrivalLine arrival : answer.arrivals()) {
      Line line = new Line();
      List<Object> cells = cells(arrival);
      for (int i = 0; i < COLUMNS.size(); i++) {
        line.add(COLUMNS.get(i), cells.get(i));
      }
      lines.append(line.text());
    }
    return lines.toString();
  }

  private static List<Object> cells(ArrivalLine arrival) {
    return List.of(
        arrival.microphone(),
        arrival.pathM(),
        arrival.arrivalMs(),
        arrival.afterFirstMs(),
        arrival.afterFirstSamples(),
        arrival.driftSamples(),
        Cells.of(arrival.levelDbSpl()),
        arrival.polarity().invertBySide(),
        arrival.polarity().invertByLowSum());
  }
}
