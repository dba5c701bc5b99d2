package org.standoff.rest.settings;

import java.util.List;
import org.standoff.answers.headroom.HeadroomAnswer;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A headroom answer for sheets and for scripts that read one line. */
final class HeadroomSheet {
  private HeadroomSheet() {}

  /** A row a stage. */
  static String csv(HeadroomAnswer answer) {
    CsvTable table =
        new CsvTable(List.of("stage", "headroom_db", "guarded_headroom_db", "clip_probability"));
    answer
        .stages()
        .forEach(
            s ->
                table.row(
                    List.of(
                        s.stage().id(),
                        s.headroomDb(),
                        s.guardedHeadroomDb(),
                        s.clipProbability())));
    return table.text();
  }

  /** The whole in one line of names and values. */
  static String line(HeadroomAnswer answer) {
    return new Line()
        .add("microphone", answer.microphone())
        .add("verdict", answer.verdict().id())
        .add("headroom_db", answer.headroomDb())
        .add("first_to_clip", answer.firstToClip().id())
        .add("clip_probability", answer.clipProbability())
        .add("gain_db", answer.settings().gainDb())
        .add("recommended_gain_db", answer.recommendedGainDb())
        .add("peak_dbfs", answer.settings().peakDbfs())
        .add("noise_dba", answer.noise().totalDba())
        .text();
  }
}
