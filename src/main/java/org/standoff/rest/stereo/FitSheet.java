package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.stereo.StereoFitAnswer;
import org.standoff.answers.stereo.StereoFitAnswer.FittedPair;
import org.standoff.answers.stereo.StereoFitAnswer.UnfitPair;
import org.standoff.pairs.fit.GivesUp;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A fit answer for sheets and for scripts that read one line. */
final class FitSheet {
  private static final List<String> COLUMNS =
      List.of(
          "rank",
          "pair",
          "pattern",
          "spacing_m",
          "angle_deg",
          "side_gain",
          "distance_m",
          "fill_pct",
          "recording_angle_deg",
          "worst_mono_loss_db",
          "spread_pct",
          "direct_to_reverberant_db",
          "because");

  private FitSheet() {}

  /** A row a solution, then a row a layout that can't do it. */
  static String csv(StereoFitAnswer answer) {
    CsvTable table = new CsvTable(COLUMNS);
    answer.solutions().forEach(solution -> table.row(cells(solution)));
    answer.whyNot().forEach(unfit -> table.row(cells(unfit)));
    return table.text();
  }

  /** The best solution in one line of names and values; why there is none where there is none. */
  static String line(StereoFitAnswer answer) {
    if (answer.solutions().isEmpty()) {
      return new Line()
          .add("verdict", "refused")
          .add("because", answer.whyNot().isEmpty() ? "" : answer.whyNot().get(0).detail())
          .text();
    }
    Line line = new Line();
    List<@Nullable Object> cells = cells(answer.solutions().get(0));
    for (int i = 0; i < COLUMNS.size() - 1; i++) {
      Object cell = cells.get(i);
      if (cell != null) {
        line.add(COLUMNS.get(i), cell);
      }
    }
    return line.text();
  }

  private static List<@Nullable Object> cells(FittedPair solution) {
    List<@Nullable Object> cells = new ArrayList<>();
    cells.add(solution.rank());
    cells.add(solution.pair());
    cells.add(solution.pattern());
    cells.add(solution.parameters().get("spacing_m"));
    cells.add(solution.parameters().get("angle_deg"));
    cells.add(solution.parameters().get("side_gain"));
    cells.add(solution.distanceM());
    cells.add(solution.fillPct());
    cells.add(figure(solution.recordingAngle().totalDeg()));
    cells.add(solution.worstMonoLossDb());
    cells.add(solution.spreadPct());
    cells.add(figure(solution.directToReverberantDb()));
    cells.add(String.join("; ", solution.givesUp().stream().map(GivesUp::detail).toList()));
    return cells;
  }

  private static List<@Nullable Object> cells(UnfitPair unfit) {
    List<@Nullable Object> cells = new ArrayList<>();
    cells.add(null);
    cells.add(unfit.pair());
    cells.add(unfit.pattern().orElse(null));
    cells.add(unfit.nearest().get("spacing_m"));
    cells.add(unfit.nearest().get("angle_deg"));
    cells.add(unfit.nearest().get("side_gain"));
    cells.add(unfit.figures().get("distance_m"));
    cells.add(unfit.figures().get("reached_pct"));
    cells.add(null);
    cells.add(unfit.figures().get("loss_db"));
    cells.add(null);
    cells.add(unfit.figures().get("direct_to_reverberant_db"));
    cells.add(unfit.detail());
    return cells;
  }

  private static @Nullable Double figure(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
