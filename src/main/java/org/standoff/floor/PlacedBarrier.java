package org.standoff.floor;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * A barrier that stands somewhere, upright on the floor.
 *
 * @param barrier what it is
 * @param xM middle of its foot
 * @param yM middle of its foot
 * @param facingAzimuthDeg where one of its faces looks: 0 is front (+y), positive to the left
 */
public record PlacedBarrier(Barrier barrier, double xM, double yM, double facingAzimuthDeg) {
  public PlacedBarrier {
    if (!Double.isFinite(xM + yM + facingAzimuthDeg)) {
      throw new IllegalArgumentException(
          "not a place for a barrier: " + xM + ", " + yM + ", " + facingAzimuthDeg + "°");
    }
  }

  /**
   * Across the line from one place to another.
   *
   * @param share of the way at which it stands, 0 to 1
   */
  public static PlacedBarrier across(Barrier barrier, Point3 from, Point3 to, double share) {
    return new PlacedBarrier(
        barrier,
        from.xM() + share * (to.xM() - from.xM()),
        from.yM() + share * (to.yM() - from.yM()),
        from.directionTo(to).azimuthDeg());
  }

  /** Where the face looks. */
  Direction normal() {
    return new Direction(facingAzimuthDeg, 0);
  }

  /** Whether {@code place} is nearer than {@code marginM} to the panel, or inside it. */
  public boolean touches(Point3 place, double marginM) {
    Direction normal = normal();
    double x = place.xM() - xM;
    double y = place.yM() - yM;
    double through = Math.abs(x * normal.x() + y * normal.y());
    double along = Math.abs(x * normal.y() - y * normal.x());
    return through <= barrier.thicknessM() / 2 + marginM
        && along <= barrier.widthM() / 2 + marginM
        && place.zM() <= barrier.heightM() + marginM;
  }
}
