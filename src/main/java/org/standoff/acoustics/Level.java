package org.standoff.acoustics;

/**
 * Decibel arithmetic; the only home of the conversion between decibels and ratios.
 *
 * <p>Definitions of ISO 80000-8 (power ratio 10 lg, amplitude ratio 20 lg). A silent source is −∞
 * dB and survives every sum; NaN in gives NaN out.
 */
public final class Level {
  /** Crest of a sine in dB, 10 lg 2: its instantaneous peak stands this far above its rms level. */
  public static final double SINE_CREST_DB = 10 * Math.log10(2);

  private Level() {}

  /** 10 lg of a ratio of powers, {@code ratio} ≥ 0; 0 gives −∞, a negative ratio NaN. */
  public static double ofPowerRatio(double ratio) {
    return 10 * Math.log10(ratio);
  }

  /** 20 lg of a ratio of amplitudes, {@code ratio} ≥ 0; 0 gives −∞, a negative ratio NaN. */
  public static double ofAmplitudeRatio(double ratio) {
    return 20 * Math.log10(ratio);
  }

  /** 10^(dB/10); −∞ gives 0. */
  public static double powerRatio(double db) {
    return Math.pow(10, db / 10);
  }

  /** 10^(dB/20); −∞ gives 0. */
  public static double amplitudeRatio(double db) {
    return Math.pow(10, db / 20);
  }

  /**
   * Incoherent sum, 10 lg Σ 10^(Li/10): levels of unlike signals (two players). Nothing, or nothing
   * but silence, gives −∞.
   */
  public static double energySum(double... db) {
    return sum(db, 10);
  }

  /**
   * Coherent sum in phase, 20 lg Σ 10^(Li/20): one signal met several times without delay. Nothing,
   * or nothing but silence, gives −∞.
   */
  public static double inPhaseSum(double... db) {
    return sum(db, 20);
  }

  /**
   * Coherent sum of two tones of one frequency, 20 lg |10^(a/20) + 10^(b/20) e^(jφ)|.
   *
   * @param phaseDeg angle between the two, any finite value; 180 with equal levels gives −∞ within
   *     rounding
   */
  public static double phasorSum(double aDb, double bDb, double phaseDeg) {
    double a = amplitudeRatio(aDb);
    double b = amplitudeRatio(bDb);
    double phase = Math.toRadians(phaseDeg);
    return ofAmplitudeRatio(Math.hypot(a + b * Math.cos(phase), b * Math.sin(phase)));
  }

  private static double sum(double[] db, double dbPerDecade) {
    double largest = Double.NEGATIVE_INFINITY;
    for (double level : db) {
      largest = Math.max(largest, level);
    }
    if (Double.isInfinite(largest)) {
      return largest;
    }
    double total = 0;
    for (double level : db) {
      total += Math.pow(10, (level - largest) / dbPerDecade);
    }
    return largest + dbPerDecade * Math.log10(total);
  }
}
