package org.standoff.floor;

import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * Mean-square sound pressure per octave re (20 µPa)², kept as ratios so that sums cost nothing and
 * turned into dB when somebody asks. ρc is taken as 400 N s/m³, as in {@link
 * org.standoff.acoustics.SoundPower}.
 */
public final class OctaveEnergies {
  /** Silence. */
  public static final OctaveEnergies NONE = new OctaveEnergies(new double[Octave.COUNT]);

  private final double[] energies;

  /** Takes over the array; nobody may write to it afterwards. */
  OctaveEnergies(double[] energies) {
    this.energies = energies;
  }

  /** Level of one octave in dB; −∞ for silence. */
  public double db(Octave octave) {
    return Level.ofPowerRatio(energies[octave.ordinal()]);
  }

  /** Levels of all octaves in dB; −∞ for silence. */
  public Octaves octavesDb() {
    double[] db = new double[Octave.COUNT];
    for (int i = 0; i < db.length; i++) {
      db[i] = Level.ofPowerRatio(energies[i]);
    }
    return Octaves.of(db);
  }

  /** Unweighted level over all octaves in dB; −∞ for silence. */
  public double overallDb() {
    return Level.ofPowerRatio(sum());
  }

  /** A-weighted level in dB(A). */
  public double overallDba() {
    return AWeighting.overOctaves(octavesDb());
  }

  /** Incoherent sum with another sound. */
  public OctaveEnergies plus(OctaveEnergies other) {
    double[] both = new double[Octave.COUNT];
    for (int i = 0; i < both.length; i++) {
      both[i] = energies[i] + other.energies[i];
    }
    return new OctaveEnergies(both);
  }

  /** The same sound with {@code gainDb} on all octaves. */
  public OctaveEnergies louder(double gainDb) {
    double gain = Level.powerRatio(gainDb);
    double[] scaled = new double[Octave.COUNT];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = energies[i] * gain;
    }
    return new OctaveEnergies(scaled);
  }

  double energy(int octave) {
    return energies[octave];
  }

  double sum() {
    double sum = 0;
    for (double energy : energies) {
      sum += energy;
    }
    return sum;
  }
}
