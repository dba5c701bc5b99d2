package org.standoff.floor;

/**
 * A stretch of time at one level.
 *
 * @param levelDba equivalent level in dB(A); −∞ for silence
 * @param hours ≥ 0
 */
public record Exposure(double levelDba, double hours) {
  public Exposure {
    if (Double.isNaN(levelDba) || !(hours >= 0 && Double.isFinite(hours))) {
      throw new IllegalArgumentException(
          "not an exposure: " + levelDba + " dB(A) for " + hours + " h");
    }
  }
}
