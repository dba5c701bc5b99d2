package org.standoff.pairs;

import java.util.function.DoublePredicate;

/**
 * Where a condition starts to hold, by halving: it needs no derivative, no smoothness, and can't
 * leave its bracket.
 */
public final class Crossing {
  private static final int HALVINGS = 36;

  private Crossing() {}

  /**
   * A place where {@code holds} turns true on the way from {@code from} to {@code to}, within 2⁻³⁶
   * of their distance, on the side where it holds.
   *
   * @param holds true at {@code to}; if it is true at {@code from} too, the answer is near there
   * @param to may be below {@code from}
   */
  public static double between(DoublePredicate holds, double from, double to) {
    double without = from;
    double with = to;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (without + with) / 2;
      if (holds.test(middle)) {
        with = middle;
      } else {
        without = middle;
      }
    }
    return with;
  }
}
