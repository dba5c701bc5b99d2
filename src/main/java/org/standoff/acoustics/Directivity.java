package org.standoff.acoustics;

/**
 * Directivity index of a source on its axis at four frequencies, straight over log frequency
 * between them and constant outside; off axis the assumed pressure pattern ((1 + cos θ)/2)^n with
 * 2n + 1 = Q, whose mean square over the sphere is 1/Q. Real instruments have side lobes.
 *
 * @param di125Db DI at 125 Hz, ≥ 0 dB, and so on
 */
public record Directivity(double di125Db, double di500Db, double di2kDb, double di8kDb) {
  /** Equal to all sides. */
  public static final Directivity OMNI = new Directivity(0, 0, 0, 0);

  private static final double LOWEST_HZ = 125;
  private static final double STEP = 4;

  public Directivity {
    for (double db : new double[] {di125Db, di500Db, di2kDb, di8kDb}) {
      if (!(db >= 0 && Double.isFinite(db))) {
        throw new IllegalArgumentException("a directivity index is 0 dB or more, not " + db);
      }
    }
  }

  /** DI in dB at {@code hz} > 0. */
  public double indexDb(double hz) {
    double[] known = {di125Db, di500Db, di2kDb, di8kDb};
    double place = Math.log(hz / LOWEST_HZ) / Math.log(STEP);
    double inside = Math.min(Math.max(place, 0), known.length - 1.0);
    int below = Math.min((int) inside, known.length - 2);
    return known[below] + (inside - below) * (known[below + 1] - known[below]);
  }

  /** Q = 10^(DI/10), ≥ 1. */
  public double factor(double hz) {
    return Level.powerRatio(indexDb(hz));
  }

  /**
   * Level in dB at {@code angleDeg} off the axis re the axis, 20 n lg((1 + cos θ)/2), n = (Q −
   * 1)/2; 0 everywhere for Q = 1, else −∞ at 180° (within rounding).
   */
  public double offAxisDb(double hz, double angleDeg) {
    double exponent = (factor(hz) - 1) / 2;
    double half = Math.cos(Math.toRadians(angleDeg) / 2);
    return exponent == 0 ? 0 : exponent * Level.ofAmplitudeRatio(half * half);
  }
}
