package org.standoff.acoustics;

/**
 * A place in a room on the axes of ITU-R BS.2051 and BS.2076.
 *
 * @param xM metres to the right
 * @param yM metres to the front
 * @param zM metres up
 */
public record Point3(double xM, double yM, double zM) {
  public double distanceToM(Point3 other) {
    return Math.hypot(Math.hypot(other.xM - xM, other.yM - yM), other.zM - zM);
  }

  /** The direction in which {@code other} lies; straight ahead when it is the same place. */
  public Direction directionTo(Point3 other) {
    return Direction.ofVector(other.xM - xM, other.yM - yM, other.zM - zM);
  }

  /** The place {@code distanceM} away in {@code direction}. */
  public Point3 moved(Direction direction, double distanceM) {
    return new Point3(
        xM + direction.x() * distanceM,
        yM + direction.y() * distanceM,
        zM + direction.z() * distanceM);
  }
}
