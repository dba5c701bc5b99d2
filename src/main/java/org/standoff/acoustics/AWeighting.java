package org.standoff.acoustics;

/** The A frequency weighting of IEC 61672-1, annex E (analytic form). */
public final class AWeighting {
  private static final double F1_HZ = 20.598997;
  private static final double F2_HZ = 107.65265;
  private static final double F3_HZ = 737.86223;
  private static final double F4_HZ = 12194.217;
  private static final double AT_1_KHZ_DB = Level.ofAmplitudeRatio(response(1000));

  private AWeighting() {}

  /** Weight in dB at {@code hz} ≥ 0, 0 at 1 kHz; −∞ at 0 Hz. */
  public static double db(double hz) {
    return Level.ofAmplitudeRatio(response(hz)) - AT_1_KHZ_DB;
  }

  /** The A-weighted level in dB(A) of octave levels, weighted at their exact midbands. */
  public static double overOctaves(Octaves levelsDb) {
    double[] weighted = levelsDb.toArray();
    for (Octave octave : Octave.all()) {
      weighted[octave.ordinal()] += db(octave.midHz());
    }
    return Level.energySum(weighted);
  }

  private static double response(double hz) {
    double ff = hz * hz;
    return F4_HZ
        * F4_HZ
        * ff
        * ff
        / ((ff + F1_HZ * F1_HZ)
            * Math.sqrt((ff + F2_HZ * F2_HZ) * (ff + F3_HZ * F3_HZ))
            * (ff + F4_HZ * F4_HZ));
  }
}
