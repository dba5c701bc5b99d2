package org.standoff.pairs;

/**
 * A round, sound-proof disc in the middle plane between two capsules.
 *
 * @param radiusM above 0
 */
public record Disc(double radiusM) {
  public Disc {
    if (!(radiusM > 0 && Double.isFinite(radiusM))) {
      throw new IllegalArgumentException("a disc's radius must be above 0 m, not " + radiusM);
    }
  }
}
