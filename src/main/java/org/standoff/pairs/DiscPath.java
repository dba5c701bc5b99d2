package org.standoff.pairs;

import org.standoff.acoustics.Point3;

/**
 * The way over the edge of a disc that stands in the plane x = 0 with its middle in the origin, to
 * a capsule on its axis. All points of the edge are equally far from the capsule, so the shortest
 * way crosses the edge point nearest to the source. Derived; for a source in the horizontal plane
 * this is the path over the front edge, (√(a² + d²/4) − a cos θ + (d/2) sin θ)/c.
 */
final class DiscPath {
  private DiscPath() {}

  /** Whether the disc cuts the straight way from {@code place} to {@code capsule}. */
  static boolean blocks(Disc disc, Point3 capsule, Point3 place) {
    if (place.xM() * capsule.xM() >= 0) {
      return false;
    }
    double share = capsule.xM() / (capsule.xM() - place.xM());
    return share * Math.hypot(place.yM(), place.zM()) < disc.radiusM();
  }

  /** The same for a plane wave from the direction of a unit vector. */
  static boolean blocksFar(Disc disc, Point3 capsule, Point3 unit) {
    if (unit.xM() * capsule.xM() >= 0) {
      return false;
    }
    double offAxisM = Math.abs(capsule.xM() / unit.xM()) * Math.hypot(unit.yM(), unit.zM());
    return offAxisM < disc.radiusM();
  }

  /** The edge point nearest to {@code place}; the front one when all are equally near. */
  static Point3 edge(Disc disc, Point3 place) {
    double offAxis = Math.hypot(place.yM(), place.zM());
    return offAxis == 0
        ? new Point3(0, disc.radiusM(), 0)
        : new Point3(
            0, disc.radiusM() * place.yM() / offAxis, disc.radiusM() * place.zM() / offAxis);
  }
}
