package org.standoff.acoustics;

/**
 * An instantaneous peak sound pressure level, 20 lg(p_peak/20 µPa), {@code peak_db_spl} outside.
 *
 * <p>Maximum SPL on data sheets, dBu and 0 dBFS speak of the rms of a sine: {@link #asSine()} gives
 * the level to compare with them.
 *
 * @param db level; −∞ for silence, never NaN
 */
public record PeakSpl(double db) {
  public PeakSpl {
    if (Double.isNaN(db)) {
      throw new IllegalArgumentException("a level must be a number");
    }
  }

  /** The level of an instantaneous peak of {@code peakPa} ≥ 0; 0 gives −∞. */
  public static PeakSpl ofPascals(double peakPa) {
    return new PeakSpl(Level.ofAmplitudeRatio(peakPa / RmsSpl.REFERENCE_PA));
  }

  /** The rms level of the sine that has this peak, 3.01 dB lower. */
  public RmsSpl asSine() {
    return new RmsSpl(db - Level.SINE_CREST_DB);
  }

  public PeakSpl plus(double gainDb) {
    return new PeakSpl(db + gainDb);
  }
}
