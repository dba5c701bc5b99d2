package org.standoff.floor;

import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * The direct sound of one source in one microphone, part by part in dB; the parts add to its level.
 *
 * @param powerDb sound power level
 * @param spreadingDb −10 lg(4π r²), r the radiator's effective distance
 * @param sourceDirectivityDb directivity index on the axis and what is lost off it
 * @param patternDb off the microphone's axis, with its rejection capped; ≤ 0
 * @param airDb lost on the way (ISO 9613-1); ≤ 0
 * @param barrierDb kept by barriers; ≤ 0
 */
public record DirectTerms(
    Octaves powerDb,
    double spreadingDb,
    Octaves sourceDirectivityDb,
    Octaves patternDb,
    Octaves airDb,
    Octaves barrierDb) {

  /** The level that the parts add to. */
  public double levelDb(Octave octave) {
    return powerDb.get(octave)
        + spreadingDb
        + sourceDirectivityDb.get(octave)
        + patternDb.get(octave)
        + airDb.get(octave)
        + barrierDb.get(octave);
  }
}
