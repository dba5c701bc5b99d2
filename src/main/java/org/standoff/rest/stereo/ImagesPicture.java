package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswer.ImageLine;
import org.standoff.answers.stereo.GeometryAnswer.RecordingAngleLine;
import org.standoff.answers.stereo.GeometryAnswer.SourceInPair;
import org.standoff.rest.media.Svg;
import org.standoff.rest.media.Words;

/** Where each source lands between the loudspeakers, a row a model. */
final class ImagesPicture {
  private static final int WIDTH = 900;
  private static final double LEFT = 276;
  private static final double RIGHT = 856;
  private static final double MIDDLE = (LEFT + RIGHT) / 2;
  private static final double PER_PCT = (RIGHT - LEFT) / 200;
  private static final double TOP = 112;
  private static final double STACK = 22;
  private static final double ROW = 18;
  private static final double APART = 2 * Placing.RADIUS + 2;

  private static final Svg.Pen BEYOND = new Svg.Pen(1.2, "2.5 2", "#fff");

  private record Mark(int number, double x, boolean beyondStudy) {}

  private final Svg svg;
  private final GeometryAnswer answer;

  private ImagesPicture(GeometryAnswer answer) {
    this.answer = answer;
    this.svg = new Svg(WIDTH, "Images: " + PairHeading.title(answer.pair()), words(answer));
  }

  static String draw(GeometryAnswer answer) {
    return new ImagesPicture(answer).draw();
  }

  private String draw() {
    PairHeading.draw(svg, answer.pair(), "where the images land");
    double y = TOP;
    Map<String, List<Mark>> rows = rows();
    scale();
    for (Map.Entry<String, List<Mark>> row : rows.entrySet()) {
      y = model(row.getKey(), row.getValue(), y);
    }
    return svg.document(legend(y + 30) + 14);
  }

  private void scale() {
    List<String> marks = List.of("left", "15°", "middle", "15°", "right");
    for (int i = 0; i < marks.size(); i++) {
      svg.text(new Svg.At(LEFT + i * (RIGHT - LEFT) / 4, 82), Svg.Anchor.MIDDLE, 12, marks.get(i));
    }
    svg.box(new Svg.At(LEFT - 6, 90), 12, 16, Svg.Pen.BLACK);
    svg.box(new Svg.At(RIGHT - 6, 90), 12, 16, Svg.Pen.BLACK);
  }

  private void grid(double top, double bottom) {
    for (int i = 0; i <= 4; i++) {
      double x = LEFT + i * (RIGHT - LEFT) / 4;
      svg.line(new Svg.At(x, top), new Svg.At(x, bottom), Svg.Pen.DOTTED);
    }
  }

  private Map<String, List<Mark>> rows() {
    Map<String, List<Mark>> rows = new LinkedHashMap<>();
    for (int i = 0; i < answer.sources().size(); i++) {
      for (ImageLine image : answer.sources().get(i).images()) {
        rows.computeIfAbsent(image.model(), model -> new ArrayList<>())
            .add(new Mark(i + 1, MIDDLE - image.positionPct() * PER_PCT, image.beyondStudy()));
      }
    }
    return rows;
  }

  /** Draws a row; marks that would cover each other stand on one another. */
  private double model(String model, List<Mark> marks, double above) {
    List<Double> ends = new ArrayList<>();
    List<Integer> floors = new ArrayList<>();
    List<Mark> sorted = marks.stream().sorted(Comparator.comparingDouble(Mark::x)).toList();
    for (Mark mark : sorted) {
      int floor = 0;
      while (floor < ends.size() && mark.x() - ends.get(floor) < APART) {
        floor++;
      }
      if (floor == ends.size()) {
        ends.add(mark.x());
      } else {
        ends.set(floor, mark.x());
      }
      floors.add(floor);
    }
    double base = above + 26 + (ends.size() - 1) * STACK;
    grid(above, base + 22);
    svg.text(new Svg.At(24, base - 3), Svg.Anchor.START, 13, Words.cut(title(model), 32));
    svg.text(new Svg.At(24, base + 12), Svg.Anchor.START, 10, "#555", Words.cut(model, 40));
    svg.line(new Svg.At(LEFT, base), new Svg.At(RIGHT, base), Svg.Pen.THIN);
    for (int i = 0; i < sorted.size(); i++) {
      if (floors.get(i) > 0) {
        Svg.At foot = new Svg.At(sorted.get(i).x(), base);
        svg.line(new Svg.At(foot.x(), base - floors.get(i) * STACK), foot, Svg.Pen.DOTTED);
      }
    }
    for (int i = 0; i < sorted.size(); i++) {
      Mark mark = sorted.get(i);
      Placing.mark(
          svg,
          mark.number(),
          new Svg.At(mark.x(), base - floors.get(i) * STACK),
          mark.beyondStudy() ? BEYOND : Svg.Pen.WHITE);
    }
    return base + 22;
  }

  private String title(String model) {
    return answer.recordingAngles().stream()
        .filter(line -> line.model().equals(model))
        .map(RecordingAngleLine::title)
        .findFirst()
        .orElse(model);
  }

  private double legend(double top) {
    double y = top;
    svg.text(
        new Svg.At(24, y),
        Svg.Anchor.START,
        12,
        answer.sources().isEmpty()
            ? "The question names no sources."
            : "Loudspeakers at 30° to each side. Dashed: past what the study's figures are meant"
                + " for. Studies differ; the spread is part of the answer.");
    for (int i = 0; i < answer.sources().size(); i++) {
      SourceInPair source = answer.sources().get(i);
      y += ROW + (i == 0 ? 6 : 0);
      svg.text(new Svg.At(24, y), Svg.Anchor.START, 12, String.valueOf(i + 1));
      svg.text(new Svg.At(52, y), Svg.Anchor.START, 12, Words.cut(source.id(), 34));
      svg.text(
          new Svg.At(LEFT, y),
          Svg.Anchor.START,
          12,
          "seen at %s, %s; models %s %% apart%s"
              .formatted(
                  Words.degrees(source.azimuthDeg()),
                  Words.distance(source.distanceM()),
                  Words.of(source.spreadPct(), 0),
                  source.oppositePolarity() ? "; opposite polarity" : ""));
    }
    return y;
  }

  private static String words(GeometryAnswer answer) {
    StringBuilder words = new StringBuilder("Image positions in per cent, 100 at the left.");
    for (SourceInPair source : answer.sources()) {
      words.append(' ').append(source.id()).append(':');
      for (ImageLine image : source.images()) {
        words.append(' ').append(image.model()).append(' ');
        words.append(Words.of(image.positionPct(), 0)).append(',');
      }
      words.setCharAt(words.length() - 1, '.');
    }
    return words.toString();
  }
}
