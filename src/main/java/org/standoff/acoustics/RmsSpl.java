package org.standoff.acoustics;

/**
 * A root-mean-square sound pressure level in dB re 20 µPa (ISO 1683), {@code level_db_spl} outside.
 *
 * <p>A type of its own because a peak level differs from it by the crest of the signal; only {@link
 * #sinePeak()} and {@link PeakSpl#asSine()} lead across.
 *
 * @param db level; −∞ for silence, never NaN
 */
public record RmsSpl(double db) {
  /** Reference sound pressure in pascal, ISO 1683. */
  public static final double REFERENCE_PA = 20e-6;

  /** Level of 1 Pa, 93.979 dB; data sheets round it to 94. */
  public static final double ONE_PASCAL_DB = Level.ofAmplitudeRatio(1 / REFERENCE_PA);

  public RmsSpl {
    if (Double.isNaN(db)) {
      throw new IllegalArgumentException("a level must be a number");
    }
  }

  /** The level of {@code rmsPa} ≥ 0; 0 gives −∞. */
  public static RmsSpl ofPascals(double rmsPa) {
    return new RmsSpl(Level.ofAmplitudeRatio(rmsPa / REFERENCE_PA));
  }

  /** The rms pressure in pascal. */
  public double pascals() {
    return REFERENCE_PA * Level.amplitudeRatio(db);
  }

  /** The instantaneous peak of the sine that has this rms level. */
  public PeakSpl sinePeak() {
    return new PeakSpl(db + Level.SINE_CREST_DB);
  }

  public RmsSpl plus(double gainDb) {
    return new RmsSpl(db + gainDb);
  }
}
