package org.standoff.pairs;

/**
 * What a {@link Parameter} may be in a layout, in the parameter's unit.
 *
 * @param least ≥ 0
 * @param usual from least to most
 * @param most finite
 */
public record ParameterRange(double least, double usual, double most) {
  public ParameterRange {
    if (!(0 <= least && least <= usual && usual <= most && Double.isFinite(most))) {
      throw new IllegalArgumentException(
          "a range is 0 ≤ least ≤ usual ≤ most, not " + least + ", " + usual + ", " + most);
    }
  }

  /** A measure that the layout fixes. */
  public static ParameterRange fixed(double value) {
    return new ParameterRange(value, value, value);
  }

  public boolean isFree() {
    return most > least;
  }

  public boolean contains(double value) {
    return least <= value && value <= most;
  }

  /** The same with nothing above {@code limit}, which must be at least {@link #least}. */
  public ParameterRange atMost(double limit) {
    return limit >= most ? this : new ParameterRange(least, Math.min(usual, limit), limit);
  }
}
