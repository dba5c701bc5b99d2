package org.standoff.rest.floor;

import java.util.ArrayList;
import java.util.List;
import org.standoff.rest.media.Svg;

/** Finds free places for marks, so that none covers another. */
final class Labels {
  private static final double[] REACHES = {15, 24, 34, 46, 60};
  private static final int DIRECTIONS = 16;

  private record Taken(double x, double y, double radius) {}

  private final List<Taken> taken = new ArrayList<>();
  private final double right;
  private final double bottom;
  private final double left;
  private final double top;

  /** Marks stay within this frame. */
  Labels(double left, double top, double right, double bottom) {
    this.left = left;
    this.top = top;
    this.right = right;
    this.bottom = bottom;
  }

  /** Something stands here. */
  void take(Svg.At at, double radius) {
    taken.add(new Taken(at.x(), at.y(), radius));
  }

  /** The nearest free place about {@code at}, first on the side away from {@code from}. */
  Svg.At place(Svg.At at, double radius, double awayRad) {
    for (double reach : REACHES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        int turn = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
        double angle = awayRad + turn * 2 * Math.PI / DIRECTIONS;
        Svg.At tried =
            new Svg.At(at.x() + reach * Math.cos(angle), at.y() + reach * Math.sin(angle));
        if (free(tried, radius)) {
          take(tried, radius);
          return tried;
        }
      }
    }
    return at;
  }

  private boolean free(Svg.At at, double radius) {
    boolean inside =
        at.x() - radius >= left
            && at.x() + radius <= right
            && at.y() - radius >= top
            && at.y() + radius <= bottom;
    return inside
        && taken.stream()
            .allMatch(
                other ->
                    Math.hypot(other.x() - at.x(), other.y() - at.y())
                        >= other.radius() + radius + 1);
  }
}
