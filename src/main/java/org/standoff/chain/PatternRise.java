package org.standoff.chain;

import java.util.Arrays;
import java.util.Optional;
import org.standoff.acoustics.HighPass;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * How far the peak that a directional microphone puts out near a source stands over the peak of the
 * pressure at its capsule, and what a high-pass takes off it again.
 *
 * <p>With w the octave shares of the pressure's energy, P the proximity rise and R the response on
 * axis, both counted as 0 where they are below it (a pattern never buys headroom), and H the gain
 * of the filter: 10 lg Σ w·10^((P+R)/10) ahead of the filter, 10 lg Σ w·10^((P+R+H)/10) behind it.
 * An energy sum over octaves is an estimate for a peak. Derived from the proximity rise of a
 * first-order microphone (Olson; Eargle) and the energy sum.
 */
public final class PatternRise {
  /** What stands for a sound whose spectrum nobody knows: nothing is counted. */
  public static final PatternRise NOT_COUNTED = new PatternRise(new double[0], 0, 0);

  private final double[] energies;
  private final double aheadDb;
  private final double aimDb;

  private PatternRise(double[] energies, double aheadDb, double aimDb) {
    this.energies = energies;
    this.aheadDb = aheadDb;
    this.aimDb = aimDb;
  }

  /**
   * Weighs the rise with the spectrum.
   *
   * @param shares octave shares of the pressure's energy at the capsule; they sum to 1
   * @param proximityDb proximity rise per octave, in dB
   * @param responseDb response on axis per octave re 1 kHz, in dB, if known
   */
  public static PatternRise of(Octaves shares, Octaves proximityDb, Optional<Octaves> responseDb) {
    double[] energies = new double[Octave.COUNT];
    double sum = 0;
    for (Octave octave : Octave.all()) {
      double share = shares.get(octave);
      if (share == 0) {
        continue;
      }
      double riseDb = Math.max(0, proximityDb.get(octave));
      if (responseDb.isPresent()) {
        riseDb += Math.max(0, responseDb.get().get(octave));
      }
      double energy = riseDb == 0 ? share : share * Level.powerRatio(riseDb);
      energies[octave.ordinal()] = energy;
      sum += energy;
    }
    return new PatternRise(energies, Level.ofPowerRatio(sum), 0);
  }

  /**
   * The same for a microphone that hears the source off its axis.
   *
   * @param aimDb level of the pattern at that angle, in dB, ≤ 0. It lowers the output but is not
   *     credited to the electronics: where a peak meets the diaphragm, an aim is no pad
   */
  public PatternRise aimedOff(double aimDb) {
    return new PatternRise(energies, aheadDb, aimDb);
  }

  /** What the aim takes off the output, in dB, ≤ 0. */
  public double aimDb() {
    return aimDb;
  }

  /** Whether a spectrum was there to weigh with. */
  public boolean counted() {
    return energies.length > 0;
  }

  /** Rise ahead of any filter, in dB, ≥ 0. */
  public double aheadDb() {
    return aheadDb;
  }

  /** Rise behind a filter, in dB; it may be negative. Without a spectrum 0. */
  public double behindDb(HighPass filter) {
    if (!counted()) {
      return 0;
    }
    double sum = 0;
    for (Octave octave : Octave.all()) {
      double energy = energies[octave.ordinal()];
      if (energy > 0) {
        sum += energy * filter.powerGain(octave.midHz());
      }
    }
    return Level.ofPowerRatio(sum);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PatternRise rise
        && Arrays.equals(energies, rise.energies)
        && aheadDb == rise.aheadDb
        && aimDb == rise.aimDb;
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(energies) + Double.hashCode(aimDb);
  }
}
