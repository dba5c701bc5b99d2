package org.standoff.pairs.fit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.standoff.pairs.Crossing;
import org.standoff.pairs.ParameterRange;

/** The distances at which a pair hears as much room as wished. */
final class RoomWindow {
  private static final int STEPS = 24;

  private RoomWindow() {}

  /**
   * What of the range keeps direct over reverberant in the window: from the first distance that
   * does to the last before one that doesn't. The usual distance is kept as near as may be.
   *
   * @param roomDb direct over reverberant at a distance
   * @return the range; its ends are NaN-free, or empty when no step of the search lies inside
   */
  static Optional<ParameterRange> within(
      ParameterRange range, Wish.Window window, DoubleUnaryOperator roomDb) {
    OptionalDouble first = OptionalDouble.empty();
    double last = range.most();
    double before = range.least();
    for (int step = 0; step <= STEPS; step++) {
      double at = range.least() + (range.most() - range.least()) * step / STEPS;
      boolean inside = window.holds(roomDb.applyAsDouble(at));
      if (inside && first.isEmpty()) {
        first = OptionalDouble.of(edge(window, roomDb, before, at));
      } else if (!inside && first.isPresent()) {
        last = edge(window, roomDb, at, before);
        break;
      }
      before = at;
    }
    if (first.isEmpty()) {
      return Optional.empty();
    }
    double usual = Math.max(first.getAsDouble(), Math.min(range.usual(), last));
    return Optional.of(new ParameterRange(first.getAsDouble(), usual, last));
  }

  private static double edge(
      Wish.Window window, DoubleUnaryOperator roomDb, double outside, double inside) {
    return Crossing.between(at -> window.holds(roomDb.applyAsDouble(at)), outside, inside);
  }
}
