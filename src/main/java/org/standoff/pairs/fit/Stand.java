package org.standoff.pairs.fit;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.ParameterRange;

/**
 * Where the stand may go: somewhere on a line that runs from a point among the players straight
 * back from where the pair looks.
 *
 * @param lookingAt the point among the players; its height doesn't matter
 * @param facingAzimuthDeg where the pair looks, in the room
 * @param distanceM horizontal distance from {@code lookingAt}, least above 0
 * @param heightM of the pair
 * @param tiltDownDeg how far it looks down
 */
public record Stand(
    Point3 lookingAt,
    double facingAzimuthDeg,
    ParameterRange distanceM,
    double heightM,
    double tiltDownDeg) {
  public Stand {
    if (!(distanceM.least() > 0)) {
      throw new IllegalArgumentException(
          "a stand keeps a distance above 0 m, not " + distanceM.least());
    }
  }

  /** Where the pair is at a distance. */
  public PairPlace at(double chosenM) {
    Direction back = new Direction(facingAzimuthDeg, 0).opposite();
    Point3 onFloor = new Point3(lookingAt.xM(), lookingAt.yM(), heightM).moved(back, chosenM);
    return new PairPlace(onFloor, facingAzimuthDeg, tiltDownDeg);
  }
}
