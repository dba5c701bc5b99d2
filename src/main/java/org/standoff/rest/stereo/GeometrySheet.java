package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswer.ImageLine;
import org.standoff.answers.stereo.GeometryAnswer.SourceInPair;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Line;

/** A geometry answer for sheets and for scripts that read lines. */
final class GeometrySheet {
  private static final List<String> COLUMNS =
      List.of(
          "source",
          "azimuth_deg",
          "distance_m",
          "level_difference_db",
          "time_difference_ms",
          "polarity",
          "mono_loss_db",
          "mono_loss_octave",
          "first_notch_hz",
          "spread_pct");

  private GeometrySheet() {}

  /** A row a source; a column of image positions a model, named after its id. */
  static String csv(GeometryAnswer answer) {
    Set<String> models = new LinkedHashSet<>();
    answer.sources().forEach(s -> s.images().forEach(image -> models.add(image.model())));
    List<String> columns = new ArrayList<>(COLUMNS);
    models.forEach(model -> columns.add(model + "_pct"));
    CsvTable table = new CsvTable(columns);
    for (SourceInPair source : answer.sources()) {
      List<@Nullable Object> cells = new ArrayList<>(cells(source));
      models.forEach(model -> cells.add(position(source, model)));
      table.row(cells);
    }
    return table.text();
  }

  /** A line a source; without sources one line for the pair. */
  static String lines(GeometryAnswer answer) {
    if (answer.sources().isEmpty()) {
      return pair(answer, new Line()).text();
    }
    StringBuilder lines = new StringBuilder();
    for (SourceInPair source : answer.sources()) {
      Line line = new Line();
      List<@Nullable Object> cells = cells(source);
      for (int i = 0; i < COLUMNS.size(); i++) {
        Object cell = cells.get(i);
        if (cell != null) {
          line.add(COLUMNS.get(i), cell);
        }
      }
      source.images().stream()
          .findFirst()
          .ifPresent(image -> line.add("image_pct", image.positionPct()));
      lines.append(pair(answer, line).text());
    }
    return lines.toString();
  }

  private static Line pair(GeometryAnswer answer, Line line) {
    line.add("pair", answer.pair().pair());
    OptionalDouble total = answer.recordingAngles().get(0).totalDeg();
    if (total.isPresent()) {
      line.add("recording_angle_deg", total.getAsDouble());
    }
    return line.add("criterion", answer.pair().criterion());
  }

  private static List<@Nullable Object> cells(SourceInPair source) {
    List<@Nullable Object> cells = new ArrayList<>();
    cells.add(source.id());
    cells.add(source.azimuthDeg());
    cells.add(figure(source.distanceM()));
    cells.add(source.levelDifferenceDb());
    cells.add(source.timeDifferenceMs());
    cells.add(source.oppositePolarity() ? "opposite" : "same");
    cells.add(source.mono().lossDb());
    cells.add(source.mono().worstOctave());
    cells.add(figure(source.mono().firstNotchHz()));
    cells.add(source.spreadPct());
    return cells;
  }

  private static @Nullable Double position(SourceInPair source, String model) {
    Optional<ImageLine> image =
        source.images().stream().filter(one -> one.model().equals(model)).findFirst();
    return image.isPresent() ? (Double) image.get().positionPct() : null;
  }

  private static @Nullable Double figure(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
