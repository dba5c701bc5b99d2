package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswer.MonoDirectionLine;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** The level of the mono sum, direction by octave, as a table whose cells darken with the loss. */
final class MonoPicture {
  private static final int WIDTH = 900;
  private static final double LEFT = 66;
  private static final double TOP = 106;
  private static final double ACROSS = 32;
  private static final double DOWN = 26;

  private enum Shade {
    WHOLE(-1, "#fff", "#000", "less than 1 dB lost, or gained"),
    LITTLE(-3, "#e4e4e4", "#000", "1 to 3 dB"),
    SOME(-6, "#c4c4c4", "#000", "3 to 6 dB"),
    MUCH(-12, "#939393", "#000", "6 to 12 dB"),
    MOST(Double.NEGATIVE_INFINITY, "#4a4a4a", "#fff", "more than 12 dB");

    private final double fromDb;
    private final String ground;
    private final String letters;
    private final String words;

    Shade(double fromDb, String ground, String letters, String words) {
      this.fromDb = fromDb;
      this.ground = ground;
      this.letters = letters;
      this.words = words;
    }

    static Shade of(double db) {
      for (Shade shade : values()) {
        if (db > shade.fromDb) {
          return shade;
        }
      }
      return MOST;
    }
  }

  private MonoPicture() {}

  static String draw(GeometryAnswer answer) {
    // the page is a plan: what is left of the pair stands left
    List<MonoDirectionLine> directions = new ArrayList<>(answer.mono().directions());
    Collections.reverse(directions);
    Svg svg =
        new Svg(
            WIDTH,
            "Mono sum: " + PairHeading.title(answer.pair()),
            "Level of the sum of all channels by direction and octave, against a source straight"
                + " ahead at the same distance.");
    PairHeading.draw(svg, answer.pair(), "folded to mono");
    svg.text(
        new Svg.At(24, 74),
        Svg.Anchor.START,
        12,
        "Sum of all channels in dB re straight ahead, octave bands, sources "
            + Words.distance(answer.mono().distanceM())
            + (answer.mono().distanceM().isPresent() ? " away" : " away from the pair")
            + "; columns are azimuths in degrees, positive to the left.");
    List<String> octaves = new ArrayList<>(directions.get(0).bandDb().keySet());
    Collections.reverse(octaves);
    for (int column = 0; column < directions.size(); column++) {
      column(svg, LEFT + column * ACROSS, directions.get(column), octaves);
    }
    for (int row = 0; row < octaves.size(); row++) {
      svg.text(
          new Svg.At(LEFT - 6, TOP + row * DOWN + 17),
          Svg.Anchor.END,
          11,
          octaves.get(row) + " Hz");
    }
    svg.text(new Svg.At(LEFT - 6, TOP + octaves.size() * DOWN + 22), Svg.Anchor.END, 11, "notch");
    return svg.document(legend(svg, TOP + octaves.size() * DOWN + 50) + 16);
  }

  private static void column(Svg svg, double x, MonoDirectionLine direction, List<String> octaves) {
    double middle = x + ACROSS / 2;
    svg.text(
        new Svg.At(middle, TOP - 8), Svg.Anchor.MIDDLE, 10, Words.of(direction.azimuthDeg(), 0));
    for (int row = 0; row < octaves.size(); row++) {
      double db = direction.bandDb().getOrDefault(octaves.get(row), 0.0);
      Shade shade = Shade.of(db);
      double y = TOP + row * DOWN;
      svg.box(new Svg.At(x, y), ACROSS, DOWN, Svg.Pen.THIN.filled(shade.ground));
      svg.text(new Svg.At(middle, y + 17), Svg.Anchor.MIDDLE, 11, shade.letters, Words.of(db, 0));
    }
    svg.text(
        new Svg.At(middle, TOP + octaves.size() * DOWN + 22),
        Svg.Anchor.MIDDLE,
        10,
        notch(direction.firstNotchHz()));
  }

  private static String notch(OptionalDouble hz) {
    return hz.isPresent() ? Words.hertz(hz.getAsDouble()) : "–";
  }

  private static double legend(Svg svg, double top) {
    double x = 24;
    for (Shade shade : Shade.values()) {
      svg.box(new Svg.At(x, top - 11), 16, 14, Svg.Pen.THIN.filled(shade.ground));
      svg.text(new Svg.At(x + 22, top), Svg.Anchor.START, 11, shade.words);
      x += 40 + Svg.widthOf(shade.words, 11);
    }
    svg.text(
        new Svg.At(24, top + 22),
        Svg.Anchor.START,
        11,
        "notch: the lowest dip in Hz; 0 where the channels carry the direction in opposite"
            + " polarity, which thins the bass first.");
    return top + 22;
  }
}
