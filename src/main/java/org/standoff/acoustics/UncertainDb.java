package org.standoff.acoustics;

/**
 * A figure in dB that is normally distributed: low, typical and high are its 5th, 50th and 95th
 * percentile.
 *
 * @param typicalDb the 50th percentile; −∞ for silence, never NaN
 * @param spreadDb half of the range from the 5th to the 95th percentile, ≥ 0
 */
public record UncertainDb(double typicalDb, double spreadDb) {
  private static final double HIGH = 0.95;
  private static final double SPREAD_OVER_SIGMA = Normal.quantile(HIGH);

  public UncertainDb {
    if (Double.isNaN(typicalDb) || !(spreadDb >= 0 && Double.isFinite(spreadDb))) {
      throw new IllegalArgumentException(
          "not an uncertain figure: " + typicalDb + " dB ± " + spreadDb + " dB");
    }
  }

  /** A figure that is sure. */
  public static UncertainDb exactly(double db) {
    return new UncertainDb(db, 0);
  }

  /** 5th percentile. */
  public double low() {
    return typicalDb - spreadDb;
  }

  /** 50th percentile. */
  public double typical() {
    return typicalDb;
  }

  /** 95th percentile. */
  public double high() {
    return typicalDb + spreadDb;
  }

  /** Standard deviation, spread/1.6449. */
  public double sigmaDb() {
    return spreadDb / SPREAD_OVER_SIGMA;
  }

  /** Moved by a sure {@code gainDb}. */
  public UncertainDb plus(double gainDb) {
    return new UncertainDb(typicalDb + gainDb, spreadDb);
  }

  /** The sum with an independent figure: typical figures add, spreads add in power. */
  public UncertainDb with(UncertainDb independent) {
    return new UncertainDb(
        typicalDb + independent.typicalDb, Math.hypot(spreadDb, independent.spreadDb));
  }

  /** The figure that is not exceeded with probability {@code p} in (0, 1). */
  public double percentile(double p) {
    return spreadDb == 0 ? typicalDb : typicalDb + sigmaDb() * Normal.quantile(p);
  }

  /** Probability in [0, 1] that the figure lies above {@code limitDb}. */
  public double probabilityAbove(double limitDb) {
    if (spreadDb == 0) {
      return typicalDb > limitDb ? 1 : 0;
    }
    return Normal.cumulative((typicalDb - limitDb) / sigmaDb());
  }
}
