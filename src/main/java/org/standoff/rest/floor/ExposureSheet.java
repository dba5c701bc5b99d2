package org.standoff.rest.floor;

import java.util.ArrayList;
import java.util.List;
import org.standoff.answers.floor.ExposureAnswer;
import org.standoff.answers.floor.ExposureAnswer.DoseLine;
import org.standoff.answers.floor.ExposureAnswer.SeatLine;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** Exposure for sheets and for scripts that read lines. */
final class ExposureSheet {
  private ExposureSheet() {}

  /** A row a seat. */
  static String csv(ExposureAnswer answer) {
    List<String> columns = columns(answer);
    CsvTable table = new CsvTable(columns);
    answer.seats().forEach(seat -> table.row(cells(seat)));
    return table.text();
  }

  /** A line a seat. */
  static String lines(ExposureAnswer answer) {
    List<String> columns = columns(answer);
    StringBuilder lines = new StringBuilder();
    for (SeatLine seat : answer.seats()) {
      Line line = new Line();
      List<Object> cells = cells(seat);
      for (int i = 0; i < columns.size(); i++) {
        line.add(columns.get(i), cells.get(i));
      }
      lines.append(line.text());
    }
    return lines.toString();
  }

  private static List<String> columns(ExposureAnswer answer) {
    List<String> columns = new ArrayList<>(List.of("seat", "low_dba", "typical_dba", "high_dba"));
    answer
        .rules()
        .forEach(
            rule -> {
              String name = rule.rule().id().replace('-', '_');
              columns.add(name + "_low_percent");
              columns.add(name + "_typical_percent");
              columns.add(name + "_high_percent");
            });
    return columns;
  }

  private static List<Object> cells(SeatLine seat) {
    List<Object> cells = new ArrayList<>(List.of(seat.id()));
    cells.addAll(
        seat.dailyExposureDba()
            .map(day -> List.<Object>of(day.low(), day.typical(), day.high()))
            .orElse(List.of("", "", "")));
    for (DoseLine dose : seat.doses()) {
      cells.addAll(List.of(dose.lowPercent(), dose.typicalPercent(), dose.highPercent()));
    }
    return cells;
  }
}
