package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.RoomAnswer;
import org.standoff.answers.floor.RoomAnswer.CriticalDistanceLine;
import org.standoff.answers.floor.RoomAnswer.LiningLine;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A room's answer for sheets and for scripts that read one line. */
final class RoomSheet {
  private RoomSheet() {}

  /** A row an octave. */
  static String csv(RoomAnswer answer) {
    CsvTable table =
        new CsvTable(
            List.of(
                "octave",
                "absorption_area_m2",
                "mean_absorption",
                "sabine_s",
                "eyring_s",
                "sabine_with_air_s",
                "eyring_with_air_s"));
    answer
        .decays()
        .forEach(
            decay ->
                table.row(
                    List.of(
                        decay.octave(),
                        decay.absorptionAreaM2(),
                        decay.meanAbsorption(),
                        decay.sabineS(),
                        Cells.of(decay.eyringS()),
                        decay.sabineWithAirS(),
                        Cells.of(decay.eyringWithAirS()))));
    return table.text();
  }

  /** The figures that stand for the whole band. */
  static String line(RoomAnswer answer) {
    Line line =
        new Line()
            .add("room", answer.room())
            .add("volume_m3", answer.volumeM3())
            .add("mid_absorption_area_m2", answer.midAbsorptionAreaM2())
            .add("schroeder_hz", answer.schroederHz());
    for (CriticalDistanceLine distance : answer.criticalDistances()) {
      line.add(
          "critical_distance_" + distance.pattern().id().replace('-', '_') + "_m", distance.midM());
    }
    for (LiningLine lining : answer.linings()) {
      line.add("area_m2", lining.areaM2());
      lining.lateChangeDb().ifPresent(db -> line.add("late_change_db", db));
      line.add("decay_s", lining.decayS());
    }
    return line.text();
  }
}
