package org.standoff.acoustics;

/** The A frequency weighting of IEC 61672-1, annex E (analytic form). */
public final class AWeighting {
  private static final double F1_HZ = 20.598997;
  private static final double F2_HZ = 107.65265;
  private static final double F3_HZ = 737.86223;
  private static final double F4_HZ = 12194.217;
  private static final double AT_1_KHZ_DB = Level.ofAmplitudeRatio(response(1000));
  private static final double WHITE_NOISE_DB = whiteNoiseMeanDb();

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

  /**
   * A-weighted minus unweighted level of white noise from 20 Hz to 20 kHz, in dB (−2.05): the mean
   * of the power weighting over linear frequency.
   */
  public static double whiteNoiseDb() {
    return WHITE_NOISE_DB;
  }

  /** Simpson's rule in steps of 1 Hz: exact to well under 0.001 dB for so smooth a curve. */
  private static double whiteNoiseMeanDb() {
    int from = 20;
    int to = 20_000;
    double sum = 0;
    for (int hz = from; hz <= to; hz++) {
      int weight = hz == from || hz == to ? 1 : (hz - from) % 2 == 1 ? 4 : 2;
      sum += weight * Level.powerRatio(db(hz));
    }
    return Level.ofPowerRatio(sum / 3 / (to - from));
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
