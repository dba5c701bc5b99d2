package org.standoff.pairs;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * Where a pair stands and looks. Turns places and directions between the room's axes and the pair's
 * own.
 *
 * @param middle of the pair, in the room; its z is the height
 * @param facingAzimuthDeg where the pair looks: 0 is the room's front (+y), positive to the left
 * @param tiltDownDeg how far it looks down, −90 to 90
 */
public record PairPlace(Point3 middle, double facingAzimuthDeg, double tiltDownDeg) {
  /** In the room's origin, looking to its front: the pair's axes are the room's. */
  public static final PairPlace ORIGIN = new PairPlace(new Point3(0, 0, 0), 0, 0);

  public PairPlace {
    if (!Double.isFinite(middle.xM() + middle.yM() + middle.zM() + facingAzimuthDeg)
        || !(tiltDownDeg >= -90 && tiltDownDeg <= 90)) {
      throw new IllegalArgumentException(
          "not a place for a pair: %s, facing %s°, tilted %s°"
              .formatted(middle, facingAzimuthDeg, tiltDownDeg));
    }
  }

  /** The room's coordinates of a place in the pair's axes. */
  public Point3 toRoom(Point3 own) {
    double cosTilt = Math.cos(Math.toRadians(tiltDownDeg));
    double sinTilt = Math.sin(Math.toRadians(tiltDownDeg));
    double ahead = own.yM() * cosTilt + own.zM() * sinTilt;
    double up = own.zM() * cosTilt - own.yM() * sinTilt;
    double cosTurn = Math.cos(Math.toRadians(facingAzimuthDeg));
    double sinTurn = Math.sin(Math.toRadians(facingAzimuthDeg));
    return new Point3(
        middle.xM() + own.xM() * cosTurn - ahead * sinTurn,
        middle.yM() + own.xM() * sinTurn + ahead * cosTurn,
        middle.zM() + up);
  }

  /** The pair's coordinates of a place in the room. */
  public Point3 toPair(Point3 inRoom) {
    double x = inRoom.xM() - middle.xM();
    double y = inRoom.yM() - middle.yM();
    double z = inRoom.zM() - middle.zM();
    double cosTurn = Math.cos(Math.toRadians(facingAzimuthDeg));
    double sinTurn = Math.sin(Math.toRadians(facingAzimuthDeg));
    double ahead = y * cosTurn - x * sinTurn;
    double cosTilt = Math.cos(Math.toRadians(tiltDownDeg));
    double sinTilt = Math.sin(Math.toRadians(tiltDownDeg));
    return new Point3(
        x * cosTurn + y * sinTurn, ahead * cosTilt - z * sinTilt, ahead * sinTilt + z * cosTilt);
  }

  /** A direction of the pair's axes as the room sees it. */
  public Direction toRoom(Direction own) {
    return middle.directionTo(toRoom(new Point3(own.x(), own.y(), own.z())));
  }
}
