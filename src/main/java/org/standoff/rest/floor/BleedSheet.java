package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.BleedAnswer.HearingMicrophone;
import org.standoff.answers.floor.BleedAnswer.OffenderLine;
import org.standoff.answers.floor.BleedAnswer.RemedyLine;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A bleed matrix for sheets and for scripts that read lines. */
final class BleedSheet {
  private BleedSheet() {}

  /** A row a cell of the matrix. */
  static String csv(BleedAnswer answer) {
    CsvTable table =
        new CsvTable(
            List.of(
                "microphone",
                "source",
                "wanted",
                "path_m",
                "arrival_ms",
                "microphone_angle_deg",
                "source_angle_deg",
                "direct_db_spl",
                "reflections_db_spl",
                "late_db_spl",
                "total_db_spl",
                "direct_over_room_db"));
    for (HearingMicrophone microphone : answer.microphones()) {
      microphone
          .heard()
          .forEach(
              cell ->
                  table.row(
                      List.of(
                          microphone.id(),
                          cell.source(),
                          cell.wanted(),
                          cell.pathM(),
                          cell.arrivalMs(),
                          cell.microphoneAngleDeg(),
                          cell.sourceAngleDeg(),
                          Cells.of(cell.directDbSpl()),
                          Cells.of(cell.reflectionsDbSpl()),
                          Cells.of(cell.lateDbSpl()),
                          Cells.of(cell.totalDbSpl()),
                          Cells.of(cell.directOverRoomDb()))));
    }
    return table.text();
  }

  /** A line a microphone: how it stands, its worst neighbour, the strongest remedy. */
  static String lines(BleedAnswer answer) {
    StringBuilder lines = new StringBuilder();
    answer.microphones().forEach(microphone -> lines.append(line(microphone)));
    return lines.toString();
  }

  private static String line(HearingMicrophone microphone) {
    Line line = new Line().add("microphone", microphone.id());
    microphone.wantedDirectDbSpl().ifPresent(db -> line.add("wanted_direct_db_spl", db));
    microphone
        .isolationDb()
        .ifPresent(
            db ->
                line.add("unwanted_db_spl", Cells.of(microphone.unwantedDbSpl()))
                    .add("isolation_db", db));
    if (!microphone.offenders().isEmpty()) {
      OffenderLine worst = microphone.offenders().get(0);
      line.add("worst", worst.source())
          .add("worst_db_spl", Cells.of(worst.totalDbSpl()))
          .add("comes", worst.direct() ? "direct" : "room");
    }
    microphone.remedies().stream()
        .flatMap(List::stream)
        .findFirst()
        .ifPresent(remedy -> remedy(line, remedy));
    return line.text();
  }

  private static void remedy(Line line, RemedyLine remedy) {
    line.add("remedy", remedy.kind().id())
        .add("gain_db", Cells.of(remedy.gainDb()))
        .add("what", remedy.what());
  }
}
