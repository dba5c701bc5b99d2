package org.standoff.floor;

import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Room;

/**
 * Absorbing material to hang up or lay out.
 *
 * @param title the name for people
 * @param areaM2 ≥ 0
 * @param absorption coefficient per octave, ≥ 0
 */
public record Lining(String title, double areaM2, Octaves absorption) {
  public Lining {
    if (!(areaM2 >= 0 && Double.isFinite(areaM2))) {
      throw new IllegalArgumentException("an area is 0 m2 or more, not " + areaM2);
    }
  }

  /**
   * The room with the material in it: its absorption area is added and nothing that it may cover
   * taken off, so for material on an absorbing wall the gain is the most that it can be.
   */
  public Room in(Room room) {
    return added(room, absorption.map(alpha -> alpha * areaM2));
  }

  static Room added(Room room, Octaves areaM2) {
    double[] sum = room.absorptionAreaM2().toArray();
    for (Octave octave : Octave.all()) {
      sum[octave.ordinal()] += areaM2.get(octave);
    }
    return new Room(
        room.volumeM3(),
        room.surfaceM2(),
        Octaves.of(sum),
        room.box(),
        room.air(),
        room.backgroundNoiseDba());
  }
}
