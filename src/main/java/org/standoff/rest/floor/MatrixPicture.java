package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.BleedAnswer.HeardSourceLine;
import org.standoff.answers.floor.BleedAnswer.HearingMicrophone;
import org.standoff.answers.floor.SourceOnFloor;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** What every microphone hears of every source, as a table whose cells darken with the bleed. */
final class MatrixPicture {
  private static final double LEFT = 168;
  private static final double TOP = 120;
  private static final double ACROSS = 58;
  private static final double DOWN = 26;
  private static final double ISOLATION = 76;
  private static final int LEAST_WIDTH = 780;
  private static final double LETTER_SIZE = 11;

  /** How much a cell weighs against what the microphone is there for. */
  private enum Shade {
    OVER(0, "#3a3a3a", "#fff", "over the wanted sound"),
    NEAR(-6, "#8a8a8a", "#000", "0 to 6 dB under"),
    HEARD(-12, "#b8b8b8", "#000", "6 to 12 dB under"),
    FAINT(-20, "#e0e0e0", "#000", "12 to 20 dB under"),
    AWAY(Double.NEGATIVE_INFINITY, "#fff", "#000", "more than 20 dB under");

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
      return AWAY;
    }
  }

  private final BleedAnswer answer;
  private final Svg svg;
  private final double right;

  private MatrixPicture(BleedAnswer answer) {
    this.answer = answer;
    right = LEFT + answer.floor().sources().size() * ACROSS;
    svg =
        new Svg(
            (int) Math.max(LEAST_WIDTH, right + ISOLATION + 24),
            "Bleed: what every microphone hears in " + answer.floor().room(),
            words(answer));
  }

  static String draw(BleedAnswer answer) {
    return new MatrixPicture(answer).draw();
  }

  private String draw() {
    svg.text(new Svg.At(24, 34), Svg.Anchor.START, 18, "Bleed in " + answer.floor().room());
    svg.text(
        new Svg.At(24, 56),
        Svg.Anchor.START,
        12,
        "All that a microphone hears of a source, in dB re the direct sound that it is there for;"
            + " for a room microphone in dB SPL.");
    svg.text(
        new Svg.At(24, 73),
        Svg.Anchor.START,
        12,
        "d: mostly direct, an aim or a barrier can help; r: mostly through the room. Framed: wanted.");
    columns();
    double y = TOP;
    for (HearingMicrophone microphone : answer.microphones()) {
      row(microphone, y);
      y += DOWN;
    }
    // frames last, so that no neighbour covers them
    for (int i = 0; i < answer.microphones().size(); i++) {
      frames(answer.microphones().get(i), TOP + i * DOWN);
    }
    return svg.document(legend(y + 26) + 16);
  }

  private void columns() {
    List<SourceOnFloor> sources = answer.floor().sources();
    for (int i = 0; i < sources.size(); i++) {
      // every second name stands higher, so that neighbours don't meet
      double y = TOP - (i % 2 == 0 ? 8 : 22);
      svg.text(
          new Svg.At(LEFT + (i + 0.5) * ACROSS, y),
          Svg.Anchor.MIDDLE,
          LETTER_SIZE,
          Words.cut(sources.get(i).id(), 16));
    }
    svg.text(
        new Svg.At(right + ISOLATION / 2, TOP - 8), Svg.Anchor.MIDDLE, LETTER_SIZE, "isolation");
  }

  private void row(HearingMicrophone microphone, double y) {
    svg.text(new Svg.At(LEFT - 8, y + 17), Svg.Anchor.END, 12, Words.cut(microphone.id(), 21));
    List<HeardSourceLine> heard = microphone.heard();
    boolean forTheRoom = microphone.isolationDb().isEmpty();
    for (int i = 0; i < heard.size(); i++) {
      HeardSourceLine cell = heard.get(i);
      double db = heardDb(microphone, cell);
      Shade shade = forTheRoom || cell.wanted() ? Shade.AWAY : Shade.of(db);
      svg.box(new Svg.At(LEFT + i * ACROSS, y), ACROSS, DOWN, Svg.Pen.THIN.filled(shade.ground));
      svg.text(
          new Svg.At(LEFT + (i + 0.5) * ACROSS, y + 17),
          Svg.Anchor.MIDDLE,
          LETTER_SIZE,
          shade.letters,
          figure(db) + (cell.directOverRoomDb().orElse(0) > 0 ? " d" : " r"));
    }
    svg.box(new Svg.At(right, y), ISOLATION, DOWN, Svg.Pen.THIN);
    svg.text(
        new Svg.At(right + ISOLATION / 2, y + 17),
        Svg.Anchor.MIDDLE,
        12,
        microphone.isolationDb().isPresent()
            ? Words.of(microphone.isolationDb().getAsDouble(), 1) + " dB"
            : "room");
  }

  /** Re the wanted direct sound where there is one; silence where there is none. */
  private static double heardDb(HearingMicrophone microphone, HeardSourceLine cell) {
    double totalDb = cell.totalDbSpl().orElse(Double.NEGATIVE_INFINITY);
    return microphone.isolationDb().isEmpty()
        ? totalDb
        : totalDb - microphone.wantedDirectDbSpl().orElse(Double.NEGATIVE_INFINITY);
  }

  private void frames(HearingMicrophone microphone, double y) {
    for (int i = 0; i < microphone.heard().size(); i++) {
      if (microphone.heard().get(i).wanted()) {
        svg.box(
            new Svg.At(LEFT + i * ACROSS + 1, y + 1),
            ACROSS - 2,
            DOWN - 2,
            new Svg.Pen(2.4, "", "none"));
      }
    }
  }

  private static String figure(double db) {
    return Double.isFinite(db) ? Words.of(db, 0) : "–";
  }

  private double legend(double top) {
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
        "Isolation: direct sound of the wanted over all of the unwanted. Reflections up to order "
            + answer.order()
            + "; faders not counted; players differ by several dB.");
    return top + 22;
  }

  private static String words(BleedAnswer answer) {
    StringBuilder words = new StringBuilder("A table of microphones by sources.");
    for (HearingMicrophone microphone : answer.microphones()) {
      words.append(' ').append(microphone.id()).append(": ").append(microphone.because());
      words.append('.');
    }
    return words.toString();
  }
}
