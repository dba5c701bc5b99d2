package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import org.standoff.rest.media.Svg;

/**
 * Draws numbered marks so that none covers another: a mark whose neighbours stand too near moves
 * aside, with a line to where it belongs.
 */
final class Placing {
  static final double RADIUS = 9.5;

  private static final double APART = 2 * RADIUS + 2;
  private static final int TURNS = 12;
  private static final int RINGS = 40;

  private record Mark(int number, Svg.At point, Svg.Pen pen) {}

  private final Svg svg;
  private final List<Svg.At> taken = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  Placing(Svg svg) {
    this.svg = svg;
  }

  /** Keeps a point free of marks. */
  void avoid(Svg.At point) {
    taken.add(point);
  }

  /** A mark that belongs to a point. */
  void number(int number, Svg.At point, Svg.Pen pen) {
    marks.add(new Mark(number, point, pen));
  }

  /** Draws all marks, the lines under them. */
  void draw() {
    List<Svg.At> places = places();
    for (int i = 0; i < marks.size(); i++) {
      Svg.At point = marks.get(i).point();
      if (!places.get(i).equals(point)) {
        svg.line(point, places.get(i), Svg.Pen.DOTTED);
        svg.circle(point, 1.8, Svg.Pen.BLACK);
      }
    }
    for (int i = 0; i < marks.size(); i++) {
      mark(svg, marks.get(i).number(), places.get(i), marks.get(i).pen());
    }
  }

  /** One numbered mark. */
  static void mark(Svg svg, int number, Svg.At place, Svg.Pen pen) {
    svg.circle(place, RADIUS, pen);
    svg.text(
        new Svg.At(place.x(), place.y() + 4),
        Svg.Anchor.MIDDLE,
        number > 99 ? 8.5 : 11,
        String.valueOf(number));
  }

  private List<Svg.At> places() {
    List<Svg.At> places = new ArrayList<>();
    for (Mark mark : marks) {
      Svg.At place = isAlone(mark) ? mark.point() : beside(mark.point());
      taken.add(place);
      places.add(place);
    }
    return places;
  }

  private boolean isAlone(Mark mark) {
    return isClear(mark.point(), taken)
        && marks.stream()
            .filter(other -> other.number() != mark.number())
            .noneMatch(other -> isNear(other.point(), mark.point()));
  }

  private Svg.At beside(Svg.At point) {
    List<Svg.At> points = marks.stream().map(Mark::point).toList();
    for (int ring = 1; ring <= RINGS; ring++) {
      for (int turn = 0; turn < TURNS; turn++) {
        Svg.At place = CapsulesPanel.from(point, turn * 360.0 / TURNS, ring * APART);
        if (isClear(place, taken) && points.stream().noneMatch(other -> isUnder(other, place))) {
          return place;
        }
      }
    }
    return point;
  }

  private static boolean isClear(Svg.At place, List<Svg.At> others) {
    return others.stream().noneMatch(other -> isNear(other, place));
  }

  private static boolean isNear(Svg.At one, Svg.At other) {
    return Math.hypot(other.x() - one.x(), other.y() - one.y()) < APART;
  }

  private static boolean isUnder(Svg.At point, Svg.At mark) {
    return Math.hypot(mark.x() - point.x(), mark.y() - point.y()) < RADIUS + 2;
  }
}
