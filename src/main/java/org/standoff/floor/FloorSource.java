package org.standoff.floor;

import java.util.OptionalDouble;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.Spectrum;

/**
 * A source that stands somewhere, as loud as it plays.
 *
 * @param id name on this floor
 * @param title the name for people
 * @param position of the source's reference point, on its surface
 * @param facing where its axis points
 * @param radiator law by which the level falls with the distance from the reference point
 * @param directivity over frequency and angle
 * @param powerDb sound power level per octave in dB re 1 pW; −∞ where it puts out nothing
 * @param crestDb how far the instantaneous peak stands over the long-term level, where known
 */
public record FloorSource(
    String id,
    String title,
    Point3 position,
    Direction facing,
    Radiator radiator,
    Directivity directivity,
    Octaves powerDb,
    OptionalDouble crestDb) {

  /** The power of a whole source divided over the octaves, Lw + 10 lg w. */
  public static Octaves powerPerOctave(SoundPower power, Spectrum spectrum) {
    return spectrum.powerShares().map(share -> power.db() + Level.ofPowerRatio(share));
  }

  /** The power over all octaves. */
  public SoundPower power() {
    return new SoundPower(Level.energySum(powerDb.toArray()));
  }

  /** The highest frequency that the source puts out, at the edge of its highest octave; else 0. */
  public double highestHz() {
    double highest = 0;
    for (Octave octave : Octave.all()) {
      if (powerDb.get(octave) > Double.NEGATIVE_INFINITY) {
        highest = octave.upperHz();
      }
    }
    return highest;
  }

  /** The same source at another place. */
  public FloorSource at(Point3 place) {
    return new FloorSource(id, title, place, facing, radiator, directivity, powerDb, crestDb);
  }

  /** The same source turned. */
  public FloorSource turned(Direction direction) {
    return new FloorSource(id, title, position, direction, radiator, directivity, powerDb, crestDb);
  }

  /** The same source louder by {@code gainDb}, softer when negative. */
  public FloorSource louder(double gainDb) {
    return new FloorSource(
        id,
        title,
        position,
        facing,
        radiator,
        directivity,
        powerDb.map(db -> db + gainDb),
        crestDb);
  }
}
