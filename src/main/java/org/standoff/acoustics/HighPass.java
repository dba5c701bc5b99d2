package org.standoff.acoustics;

/**
 * A Butterworth high-pass filter. Filters in microphones are not always Butterworth; two in series
 * add their dB.
 *
 * @param cornerHz frequency of 3.01 dB loss, above 0
 * @param order n, 1 to 8; the slope is 6 dB per octave for each
 */
public record HighPass(double cornerHz, int order) {
  private static final int STEEPEST_ORDER = 8;
  private static final double DB_PER_OCTAVE_AND_ORDER = 6;

  public HighPass {
    if (!(cornerHz > 0 && Double.isFinite(cornerHz))) {
      throw new IllegalArgumentException("a corner is above 0 Hz, not " + cornerHz);
    }
    if (order < 1 || order > STEEPEST_ORDER) {
      throw new IllegalArgumentException("an order is from 1 to 8, not " + order);
    }
  }

  /** −10 lg(1 + (fc/f)^(2n)) in dB, at most 0; −∞ at 0 Hz. */
  public double gainDb(double hz) {
    return Level.ofPowerRatio(powerGain(hz));
  }

  /** 1/(1 + (fc/f)^(2n)), in [0, 1]. */
  public double powerGain(double hz) {
    return 1 / (1 + Math.pow(cornerHz / hz, 2.0 * order));
  }

  /**
   * By how many degrees of a cycle the output leads the input at {@code hz} > 0: n·90 far below the
   * corner, n·45 at it, 0 far above (angles of the Butterworth poles).
   */
  public double leadDeg(double hz) {
    double lowPassFrequency = cornerHz / hz;
    double lead = 0;
    for (int pole = 0; pole < order; pole++) {
      double angle = Math.PI * (2 * pole + 1 + order) / (2.0 * order);
      lead += Math.atan2(lowPassFrequency - Math.sin(angle), -Math.cos(angle));
    }
    return Math.toDegrees(lead);
  }

  /** The trade's round figure: 6, 12, 18 … dB per octave. */
  public double slopeDbPerOctave() {
    return DB_PER_OCTAVE_AND_ORDER * order;
  }
}
