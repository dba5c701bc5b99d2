package org.standoff.acoustics;

/**
 * A rectangular room, or the box that stands in for one in image sources.
 *
 * @param lengthM along x, above 0
 * @param widthM along y, above 0
 * @param heightM along z, above 0
 */
public record Box(double lengthM, double widthM, double heightM) {
  public Box {
    if (!(lengthM > 0 && widthM > 0 && heightM > 0)) {
      throw new IllegalArgumentException(
          "the sides of a box are above 0 m, not " + lengthM + ", " + widthM + ", " + heightM);
    }
  }

  /** The box on the floor plan of a room whose ceiling is not flat: same plan, same volume. */
  public static Box ofVolume(double lengthM, double widthM, double volumeM3) {
    return new Box(lengthM, widthM, volumeM3 / (lengthM * widthM));
  }

  public double volumeM3() {
    return lengthM * widthM * heightM;
  }

  public double surfaceM2() {
    return 2 * (lengthM * widthM + widthM * heightM + heightM * lengthM);
  }
}
