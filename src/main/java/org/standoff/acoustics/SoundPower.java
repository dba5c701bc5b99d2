package org.standoff.acoustics;

/**
 * A sound power level in dB re 1 pW (ISO 3744 and others).
 *
 * @param db level; −∞ for silence, never NaN
 */
public record SoundPower(double db) {
  private static final double REFERENCE_W = 1e-12;

  public SoundPower {
    if (Double.isNaN(db)) {
      throw new IllegalArgumentException("a level must be a number");
    }
  }

  /** The level of {@code watts} ≥ 0; 0 gives −∞. */
  public static SoundPower ofWatts(double watts) {
    return new SoundPower(Level.ofPowerRatio(watts / REFERENCE_W));
  }

  /**
   * The power of a source that gives {@code level} in the free field, Lw = Lp − 10 lg(Q/(4πr²)).
   *
   * @param effectiveDistanceM r > 0 of {@link Radiator#effectiveDistanceM}
   * @param directivityFactor Q > 0 towards the place; over a spectrum, its mean weighted by the
   *     radiated power
   */
  public static SoundPower ofFreeField(
      RmsSpl level, double effectiveDistanceM, double directivityFactor) {
    return new SoundPower(level.db() - transferDb(effectiveDistanceM, directivityFactor));
  }

  public double watts() {
    return REFERENCE_W * Level.powerRatio(db);
  }

  /**
   * Level in the free field, Lp = Lw + 10 lg(Q/(4πr²)); ρc is taken as 400 N s/m³, so that 1 W/m²
   * is 120 dB (ISO 9613-2 and others do the same; the error is under 0.2 dB in a studio).
   *
   * @param effectiveDistanceM r > 0 of {@link Radiator#effectiveDistanceM}; 0 gives +∞
   * @param directivityFactor Q ≥ 0 towards the place
   */
  public RmsSpl freeField(double effectiveDistanceM, double directivityFactor) {
    return new RmsSpl(db + transferDb(effectiveDistanceM, directivityFactor));
  }

  public SoundPower plus(double gainDb) {
    return new SoundPower(db + gainDb);
  }

  private static double transferDb(double distanceM, double factor) {
    return Level.ofPowerRatio(factor / (4 * Math.PI * distanceM * distanceM));
  }
}
