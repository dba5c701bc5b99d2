package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.AimAnswer;
import org.standoff.answers.floor.AimAnswer.AimedMicrophone;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** Aims for sheets and for scripts that read lines. */
final class AimSheet {
  private static final List<String> COLUMNS =
      List.of(
          "microphone",
          "gain_db",
          "pointless",
          "pattern",
          "azimuth_deg",
          "elevation_deg",
          "x_m",
          "y_m",
          "z_m",
          "wanted_db_spl",
          "unwanted_db_spl",
          "because");

  private AimSheet() {}

  /** A row a microphone. */
  static String csv(AimAnswer answer) {
    CsvTable table = new CsvTable(COLUMNS);
    answer.microphones().forEach(microphone -> table.row(cells(microphone)));
    return table.text();
  }

  /** A line a microphone. */
  static String lines(AimAnswer answer) {
    StringBuilder lines = new StringBuilder();
    for (AimedMicrophone microphone : answer.microphones()) {
      Line line = new Line();
      List<Object> cells = cells(microphone);
      for (int i = 0; i < COLUMNS.size(); i++) {
        line.add(COLUMNS.get(i), cells.get(i));
      }
      lines.append(line.text());
    }
    return lines.toString();
  }

  private static List<Object> cells(AimedMicrophone microphone) {
    AimAnswer.AimLine best = microphone.best();
    return List.of(
        microphone.id(),
        Cells.of(microphone.gainDb()),
        microphone.pointless(),
        best.pattern().id(),
        best.azimuthDeg(),
        best.elevationDeg(),
        best.positionM().x(),
        best.positionM().y(),
        best.positionM().z(),
        Cells.of(best.wantedDbSpl()),
        Cells.of(best.unwantedDbSpl()),
        microphone.because());
  }
}
