package org.standoff.rest.settings;

import java.util.List;
import org.standoff.answers.settings.SettingsAnswer;
import org.standoff.answers.settings.SettingsAnswer.Recommendation;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A settings answer for sheets and for scripts that read one line. */
final class SettingsSheet {
  private static final List<String> COLUMNS =
      List.of(
          "rank",
          "microphone",
          "verdict",
          "pattern",
          "pad_db",
          "high_pass_hz",
          "in_line_pad_db",
          "preamp_pad_db",
          "polarity",
          "gain_db",
          "peak_dbfs",
          "headroom_db",
          "first_to_clip",
          "clip_probability",
          "noise_dba",
          "because");

  private SettingsSheet() {}

  /** A row a recommendation, then a row a microphone that fails. */
  static String csv(SettingsAnswer answer) {
    CsvTable table = new CsvTable(COLUMNS);
    answer.recommendations().forEach(r -> table.row(cells(r)));
    answer
        .whyNot()
        .forEach(
            refusal ->
                table.row(
                    List.of(
                        "",
                        refusal.microphoneId(),
                        "refused",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        refusal.because())));
    return table.text();
  }

  /** The best recommendation in one line of names and values; why there is none where there is. */
  static String line(SettingsAnswer answer) {
    if (answer.recommendations().isEmpty()) {
      return new Line()
          .add("verdict", "refused")
          .add("because", answer.whyNot().isEmpty() ? "" : answer.whyNot().get(0).because())
          .text();
    }
    Line line = new Line();
    List<Object> cells = cells(answer.recommendations().get(0));
    for (int i = 1; i < COLUMNS.size() - 1; i++) {
      line.add(COLUMNS.get(i), cells.get(i));
    }
    return line.text();
  }

  private static List<Object> cells(Recommendation r) {
    return List.of(
        r.rank(),
        r.microphone(),
        r.verdict().id(),
        r.settings().pattern(),
        r.settings().padDb(),
        r.settings().highPassHz(),
        r.settings().inLinePadDb(),
        r.settings().preampPadDb(),
        r.settings().polarity(),
        r.settings().gainDb(),
        r.settings().peakDbfs(),
        r.headroomDb(),
        r.firstToClip().id(),
        r.clipProbability(),
        r.noise().totalDba(),
        r.reasons().get(0).because());
  }
}
