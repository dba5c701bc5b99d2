package org.standoff.rest.stereo;

import java.util.ArrayList;
import java.util.List;
import org.standoff.rest.media.Svg;

/** Finds room for numbered marks so that none covers another. */
final class Placing {
  static final double RADIUS = 9.5;

  private static final double APART = 2 * RADIUS + 2;
  private static final int TURNS = 12;
  private static final int RINGS = 40;

  private final Svg svg;
  private final List<Svg.At> taken = new ArrayList<>();

  Placing(Svg svg) {
    this.svg = svg;
  }

  /** Keeps a point free of marks. */
  void avoid(Svg.At point) {
    taken.add(point);
  }

  /** Draws a number at the point, or beside it with a line to it. */
  void number(int number, Svg.At point, Svg.Pen pen) {
    Svg.At free = free(point);
    if (!free.equals(point)) {
      svg.line(point, free, Svg.Pen.DOTTED);
      svg.circle(point, 1.8, Svg.Pen.BLACK);
    }
    taken.add(free);
    svg.circle(free, RADIUS, pen);
    svg.text(
        new Svg.At(free.x(), free.y() + 4),
        Svg.Anchor.MIDDLE,
        number > 99 ? 8.5 : 11,
        String.valueOf(number));
  }

  private Svg.At free(Svg.At point) {
    if (isFree(point)) {
      return point;
    }
    for (int ring = 1; ring <= RINGS; ring++) {
      for (int turn = 0; turn < TURNS; turn++) {
        Svg.At beside = CapsulesPanel.from(point, turn * 360.0 / TURNS, ring * APART);
        if (isFree(beside)) {
          return beside;
        }
      }
    }
    return point;
  }

  private boolean isFree(Svg.At point) {
    return taken.stream()
        .allMatch(other -> Math.hypot(other.x() - point.x(), other.y() - point.y()) >= APART);
  }
}
