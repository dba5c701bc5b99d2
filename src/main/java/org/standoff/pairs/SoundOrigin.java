package org.standoff.pairs;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/** Where a sound comes from. */
public sealed interface SoundOrigin {
  /**
   * A place in the room.
   *
   * @param position finite coordinates
   */
  record InRoom(Point3 position) implements SoundOrigin {
    public InRoom {
      if (!Double.isFinite(position.xM() + position.yM() + position.zM())) {
        throw new IllegalArgumentException("a place must be finite, not " + position);
      }
    }
  }

  /**
   * A place as seen from the middle of the pair.
   *
   * @param direction in the pair's axes: azimuth 0 is where the pair looks, positive to the left
   * @param distanceM above 0, finite
   */
  record FromPair(Direction direction, double distanceM) implements SoundOrigin {
    public FromPair {
      if (!(distanceM > 0 && Double.isFinite(distanceM))) {
        throw new IllegalArgumentException("a distance must be above 0 m, not " + distanceM);
      }
    }
  }

  /**
   * So far away that the wave is plane.
   *
   * @param direction in the pair's axes
   */
  record Far(Direction direction) implements SoundOrigin {}

  /** In the pair's horizontal plane, {@code distanceM} from its middle. */
  static SoundOrigin at(double azimuthDeg, double distanceM) {
    return new FromPair(new Direction(azimuthDeg, 0), distanceM);
  }

  /** A plane wave in the pair's horizontal plane. */
  static SoundOrigin far(double azimuthDeg) {
    return new Far(new Direction(azimuthDeg, 0));
  }
}
