package org.standoff.floor;

import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * The direct sound of one source in one microphone at its fader, with its sign and its delay: what
 * a sum of microphones adds.
 *
 * @param levelsDb level per octave
 * @param arrivalMs when it arrives, delays added
 * @param inverted whether its polarity is turned over
 */
record SignedArrival(Octaves levelsDb, double arrivalMs, boolean inverted) {
  /** Above this, polarity is a matter of path, not of sign. */
  private static final Octave HIGHEST_LOW = Octave.HZ_250;

  SignedArrival delayed(double byMs) {
    return new SignedArrival(levelsDb, arrivalMs + byMs, inverted);
  }

  SignedArrival flipped() {
    return new SignedArrival(levelsDb, arrivalMs, !inverted);
  }

  /**
   * Level of the sum of both below 355 Hz in dB: per octave |a + b e^(−jωτ)|² averaged over the
   * band, a² + b² + 2ab cos(π(f₁+f₂)τ) sin(π(f₂−f₁)τ)/(π(f₂−f₁)τ), signs in a and b (derived). For
   * a source that has nothing there, the lowest octave that it has.
   */
  double lowSumDb(SignedArrival other) {
    Octave highest = highestSummed();
    double seconds = (arrivalMs - other.arrivalMs) / 1000;
    double sign = inverted == other.inverted ? 1 : -1;
    double energy = 0;
    for (Octave octave : Octave.all()) {
      if (octave.compareTo(highest) <= 0) {
        double a = Level.amplitudeRatio(levelsDb.get(octave));
        double b = Level.amplitudeRatio(other.levelsDb.get(octave));
        double middle = Math.cos(Math.PI * (octave.lowerHz() + octave.upperHz()) * seconds);
        double half = Math.PI * (octave.upperHz() - octave.lowerHz()) * seconds;
        double likeness = half == 0 ? 1 : middle * Math.sin(half) / half;
        energy += a * a + b * b + 2 * sign * a * b * likeness;
      }
    }
    return Level.ofPowerRatio(Math.max(energy, 0));
  }

  private Octave highestSummed() {
    for (Octave octave : Octave.all()) {
      boolean enough = octave.compareTo(HIGHEST_LOW) >= 0;
      if (enough && hasSoundUpTo(octave)) {
        return octave;
      }
    }
    return Octave.HZ_16K;
  }

  private boolean hasSoundUpTo(Octave highest) {
    return Octave.all().stream()
        .anyMatch(
            octave ->
                octave.compareTo(highest) <= 0 && levelsDb.get(octave) > Double.NEGATIVE_INFINITY);
  }
}
