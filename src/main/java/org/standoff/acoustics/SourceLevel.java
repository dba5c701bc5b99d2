package org.standoff.acoustics;

/**
 * Level of a source at one of its placements, loud playing, on axis, free field.
 *
 * @param atM distance from the source's reference point at which the figures hold, in m, &gt; 0
 * @param peak the highest instantaneous peak, dB re 20 µPa, with the spread of players and places
 * @param longTerm equivalent continuous level over the time that the source plays, rms
 */
public record SourceLevel(double atM, UncertainDb peak, RmsSpl longTerm) {

  /** How far the peak stands over the long-term level, in dB. */
  public double crestDb() {
    return peak.typicalDb() - longTerm.db();
  }
}
