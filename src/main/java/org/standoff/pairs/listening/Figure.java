package org.standoff.pairs.listening;

/** The check that the figures of a study share. */
final class Figure {
  private Figure() {}

  static void aboveZero(String name, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be above 0, not " + value);
    }
  }
}
