package org.standoff.rest.stereo;

import java.util.List;
import java.util.stream.Collectors;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswer.CapsuleLine;
import org.standoff.answers.stereo.GeometryAnswer.ImageLine;
import org.standoff.answers.stereo.GeometryAnswer.SourceInPair;
import org.standoff.answers.stereo.GeometryAnswer.TapeLine;
import org.standoff.rest.media.ScaleBar;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** The pair to scale, and the sources around it. */
final class PairPicture {
  private static final int WIDTH = 900;
  private static final double TOP = 84;
  private static final double HALF = 205;
  private static final double LEFT_MIDDLE = 24 + HALF;
  private static final double RIGHT_MIDDLE = WIDTH - 24 - HALF;
  private static final double ROW = 18;
  private static final double ONE_POINT_M = 0.0005;
  private static final double[] COLUMNS = {24, 52, 330, 420, 520, 640};

  private PairPicture() {}

  static String draw(GeometryAnswer answer) {
    Svg svg = new Svg(WIDTH, "Stereo pair: " + PairHeading.title(answer.pair()), words(answer));
    PairHeading.draw(svg, answer.pair(), "set-up");
    double middle = TOP + HALF;
    frame(svg, LEFT_MIDDLE, "The pair from above, places to scale");
    CapsulesPanel capsules =
        new CapsulesPanel(svg, new Svg.At(LEFT_MIDDLE, middle), HALF, answer.settingOut());
    capsules.draw(answer.settingOut());
    ScaleBar.draw(svg, new Svg.At(LEFT_MIDDLE + HALF - 14, TOP + 2 * HALF - 12), capsules.perM());
    frame(svg, RIGHT_MIDDLE, "Sources from above, to scale; the pair looks up the page");
    SourcesPanel sources = new SourcesPanel(svg, answer, new Svg.At(RIGHT_MIDDLE, middle), HALF);
    sources.draw();
    if (answer.sources().stream().anyMatch(source -> source.distanceM().isPresent())) {
      ScaleBar.draw(svg, new Svg.At(RIGHT_MIDDLE + HALF - 14, TOP + 2 * HALF - 12), sources.perM());
    }
    double end = table(svg, answer, measures(svg, answer));
    return svg.document(end + 14);
  }

  private static void frame(Svg svg, double middle, String caption) {
    svg.text(new Svg.At(middle - HALF, TOP - 8), Svg.Anchor.START, 12, caption);
    svg.box(new Svg.At(middle - HALF, TOP), 2 * HALF, 2 * HALF, Svg.Pen.THIN);
  }

  private static double measures(Svg svg, GeometryAnswer answer) {
    double y = TOP + 2 * HALF + 22;
    String tape =
        answer.settingOut().betweenCapsules().stream()
            .map(PairPicture::length)
            .collect(Collectors.joining(", "));
    String aims =
        answer.settingOut().capsules().stream()
            .map(PairPicture::aim)
            .collect(Collectors.joining(", "));
    svg.text(new Svg.At(24, y), Svg.Anchor.START, 12, "Tape: " + tape);
    svg.text(
        new Svg.At(24, y + ROW),
        Svg.Anchor.START,
        12,
        "Protractor, from the bar: " + aims + ". Dashed lobes: polarity turned over.");
    svg.text(
        new Svg.At(24, y + 2 * ROW),
        Svg.Anchor.START,
        12,
        "Recording angle by the model \u201c"
            + answer.recordingAngles().get(0).title()
            + "\u201d; by all models asked: "
            + spread(answer)
            + ".");
    return y + 2 * ROW;
  }

  private static String length(TapeLine tape) {
    String ends = tape.from() + " to " + tape.to() + " ";
    return tape.lengthM() < ONE_POINT_M
        ? ends + "in one point"
        : ends + Words.of(tape.lengthM(), 3) + " m";
  }

  private static String aim(CapsuleLine capsule) {
    return capsule.channel() + " " + Words.degrees(capsule.fromBarDeg());
  }

  private static String spread(GeometryAnswer answer) {
    double[] totals =
        answer.recordingAngles().stream()
            .filter(line -> line.totalDeg().isPresent())
            .mapToDouble(line -> line.totalDeg().getAsDouble())
            .sorted()
            .toArray();
    return totals.length == 0
        ? "none"
        : Words.degrees(totals[0]) + " to " + Words.degrees(totals[totals.length - 1]);
  }

  private static double table(Svg svg, GeometryAnswer answer, double above) {
    double y = above + 28;
    if (answer.sources().isEmpty()) {
      return above;
    }
    row(
        svg,
        y,
        "#333",
        "no.",
        "source",
        "azimuth",
        "distance",
        "level L − R",
        "image, all models (100 % = left)");
    svg.line(new Svg.At(24, y + 5), new Svg.At(WIDTH - 24, y + 5), Svg.Pen.THIN);
    for (int i = 0; i < answer.sources().size(); i++) {
      SourceInPair source = answer.sources().get(i);
      y += ROW + (i == 0 ? 4 : 0);
      row(
          svg,
          y,
          "#000",
          String.valueOf(i + 1),
          Words.cut(source.id(), 34),
          Words.degrees(source.azimuthDeg()),
          Words.distance(source.distanceM()),
          Words.of(source.levelDifferenceDb(), 1) + " dB",
          images(source));
    }
    return y;
  }

  private static void row(Svg svg, double y, String grey, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      svg.text(new Svg.At(COLUMNS[i], y), Svg.Anchor.START, 12, grey, cells[i]);
    }
  }

  private static String images(SourceInPair source) {
    List<Double> positions = source.images().stream().map(ImageLine::positionPct).sorted().toList();
    if (positions.isEmpty()) {
      return "no model places it";
    }
    String least = Words.of(positions.get(0), 0);
    String most = Words.of(positions.get(positions.size() - 1), 0);
    String range = least.equals(most) ? least + " %" : least + " to " + most + " %";
    return source.oppositePolarity() ? range + ", opposite polarity" : range;
  }

  private static String words(GeometryAnswer answer) {
    return "Plan of the pair with its patterns and aims ("
        + PairHeading.measures(answer.pair())
        + "; "
        + answer.settingOut().betweenCapsules().stream()
            .map(PairPicture::length)
            .collect(Collectors.joining(", "))
        + "), its recording angle of "
        + Words.degrees(answer.recordingAngles().get(0).totalDeg())
        + " and "
        + answer.sources().size()
        + " sources.";
  }
}
