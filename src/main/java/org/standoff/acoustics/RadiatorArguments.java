package org.standoff.acoustics;

/** What a radiator refuses: figures that no place in front of a source can have. */
final class RadiatorArguments {
  private RadiatorArguments() {}

  static double requireDistance(double distanceM) {
    if (!(distanceM >= 0)) {
      throw new IllegalArgumentException("a distance is 0 m or more, not " + distanceM);
    }
    return distanceM;
  }

  static void requireRadius(double radiusM, double leastM) {
    if (!(radiusM >= leastM && Double.isFinite(radiusM))) {
      throw new IllegalArgumentException("not a radius in metres: " + radiusM);
    }
  }
}
