package org.standoff.chain;

import java.util.Optional;

/**
 * How the gain is found: fixed, or so that the typical peak meets the target and the guarded peak
 * keeps the wanted headroom, whichever is less.
 *
 * @param fixed a gain that is already found or told
 * @param targetPeakDbfs where the typical peak is put, in dBFS
 * @param guardDb how far the guarded peak stands over the typical one, in dB, ≥ 0
 * @param wantedHeadroomDb headroom wanted at the guarded peak, in dB
 */
public record GainRule(
    Optional<Gain> fixed, double targetPeakDbfs, double guardDb, double wantedHeadroomDb) {

  /** A told gain. */
  public static GainRule given(double gainDb) {
    return fixed(Gain.given(gainDb));
  }

  /** A gain that was found elsewhere, as that of the louder one of a pair. */
  public static GainRule fixed(Gain gain) {
    return new GainRule(Optional.of(gain), 0, 0, 0);
  }

  /** The gain that puts the peak itself at the target. */
  public static GainRule target(double targetPeakDbfs) {
    return new GainRule(Optional.empty(), targetPeakDbfs, 0, Double.NEGATIVE_INFINITY);
  }

  /**
   * The gain for a peak.
   *
   * @param preamp the preamp
   * @param peakDbu the sine that has the typical peak, behind the input stage and its filter
   */
  public Gain gain(Preamp preamp, double peakDbu) {
    if (fixed.isPresent()) {
      return fixed.get();
    }
    double forTarget = preamp.fullScaleDbu() + targetPeakDbfs - peakDbu;
    double least = Math.min(preamp.fullScaleDbu(), preamp.maximumOutputDbu());
    double forGuard = least - wantedHeadroomDb - guardDb - peakDbu;
    return Gain.chosen(preamp.gain(), Math.min(forTarget, forGuard));
  }
}
