package org.standoff.rest.floor;

import java.util.List;
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.BleedAnswer.HearingMicrophone;
import org.standoff.answers.floor.BleedAnswer.OffenderLine;
import org.standoff.answers.floor.MicrophoneOnFloor;
import org.standoff.answers.floor.SourceOnFloor;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** What the numbers and letters of a floor plan stand for. */
final class PlanTable {
  private static final double ROW = 17;
  private static final double[] SOURCES = {24, 46};
  private static final double[] MICROPHONES = {280, 306, 420, 520, 620, 710};

  /**
   * The letters of a microphone: A to Z, then AA and so on.
   *
   * @param index counted from 0
   */
  record Letter(int index) {
    private static final int LETTERS = 26;

    String text() {
      String last = String.valueOf((char) ('A' + index % LETTERS));
      return index < LETTERS ? last : new Letter(index / LETTERS - 1).text() + last;
    }
  }

  private PlanTable() {}

  /** Draws it below {@code top} and tells where it ends. */
  static double draw(Svg svg, BleedAnswer answer, double top) {
    row(svg, SOURCES, top, "no.", "source");
    row(svg, MICROPHONES, top, "", "microphone", "pattern", "aim, up", "isolation", "worst");
    double y = top;
    List<SourceOnFloor> sources = answer.floor().sources();
    for (int i = 0; i < sources.size(); i++) {
      y += ROW;
      row(svg, SOURCES, y, String.valueOf(i + 1), Words.cut(sources.get(i).title(), 32));
    }
    double end = y;
    y = top;
    for (int i = 0; i < answer.microphones().size(); i++) {
      y += ROW;
      microphone(svg, y, i, answer);
    }
    return Math.max(end, y);
  }

  private static void microphone(Svg svg, double y, int index, BleedAnswer answer) {
    HearingMicrophone heard = answer.microphones().get(index);
    MicrophoneOnFloor standing = answer.floor().microphones().get(index);
    row(
        svg,
        MICROPHONES,
        y,
        new Letter(index).text(),
        Words.cut(heard.id(), 17),
        standing.pattern().id(),
        Words.of(standing.azimuthDeg(), 0) + "°, " + Words.of(standing.elevationDeg(), 0) + "°",
        heard.isolationDb().isPresent()
            ? Words.of(heard.isolationDb().getAsDouble(), 1) + " dB"
            : "–",
        heard.offenders().isEmpty() ? "–" : worst(heard.offenders().get(0)));
  }

  private static String worst(OffenderLine worst) {
    return Words.cut(worst.source(), 16) + (worst.direct() ? ", direct" : ", by the room");
  }

  private static void row(Svg svg, double[] columns, double y, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      svg.text(new Svg.At(columns[i], y), Svg.Anchor.START, 12, cells[i]);
    }
  }
}
