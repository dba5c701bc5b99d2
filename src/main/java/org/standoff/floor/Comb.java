package org.standoff.floor;

import org.standoff.acoustics.Level;

/**
 * A sound added to a later copy of itself: |1 + g e^(−jωτ)|, g = 10^(−D/20). Peaks at n/τ and
 * notches at (n + ½)/τ; of opposite polarity the two change places. Derived.
 *
 * @param levelDifferenceDb D ≥ 0, the louder over the softer; ∞ for no copy
 * @param delayMs τ ≥ 0 between them
 * @param inverted whether they are of opposite polarity
 */
public record Comb(double levelDifferenceDb, double delayMs, boolean inverted) {
  public Comb {
    if (!(levelDifferenceDb >= 0 && delayMs >= 0)) {
      throw new IllegalArgumentException(
          "a comb has a level difference and a delay of 0 or more, not "
              + levelDifferenceDb
              + " dB, "
              + delayMs
              + " ms");
    }
  }

  /** Two levels of the same sound, whichever is louder; −∞ twice counts as equal. */
  public static Comb of(double oneDb, double otherDb, double delayMs, boolean inverted) {
    return new Comb(oneDb == otherDb ? 0 : Math.abs(oneDb - otherDb), Math.abs(delayMs), inverted);
  }

  /** The level difference at which the ripple is {@code rippleDb} > 0. */
  public static double differenceOfRippleDb(double rippleDb) {
    double x = Level.amplitudeRatio(rippleDb);
    return -Level.ofAmplitudeRatio((x - 1) / (x + 1));
  }

  /** Highest level re the louder alone, 20 lg(1 + g), in dB. */
  public double peakDb() {
    return Level.ofAmplitudeRatio(1 + softer());
  }

  /** Lowest level re the louder alone, 20 lg(1 − g), in dB; −∞ for equal levels. */
  public double dipDb() {
    return Level.ofAmplitudeRatio(1 - softer());
  }

  /** From peak to dip, 20 lg((1 + g)/(1 − g)), in dB; ∞ for equal levels. */
  public double rippleDb() {
    return peakDb() - dipDb();
  }

  /**
   * Lowest notch above 0 Hz: 1/(2τ), or 1/τ when inverted, which is also out at 0 Hz; ∞ without
   * delay.
   */
  public double firstNotchHz() {
    return inverted ? notchSpacingHz() : notchSpacingHz() / 2;
  }

  /** From notch to notch, 1/τ. */
  public double notchSpacingHz() {
    return 1000 / delayMs;
  }

  /** Level of a tone of {@code hz} re the louder alone, in dB. */
  public double toneDb(double hz) {
    double phaseDeg = 360 * hz * delayMs / 1000 + (inverted ? 180 : 0);
    return Level.phasorSum(0, -levelDifferenceDb, phaseDeg);
  }

  private double softer() {
    return Level.amplitudeRatio(-levelDifferenceDb);
  }
}
