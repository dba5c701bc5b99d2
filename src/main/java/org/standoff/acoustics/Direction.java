package org.standoff.acoustics;

/**
 * A direction on the axes of ITU-R BS.2051 and BS.2076.
 *
 * @param azimuthDeg 0 is front (+y), positive to the left (−x)
 * @param elevationDeg positive up, −90 to 90
 */
public record Direction(double azimuthDeg, double elevationDeg) {
  /** Straight ahead. */
  public static final Direction FRONT = new Direction(0, 0);

  public Direction {
    if (!Double.isFinite(azimuthDeg) || !(elevationDeg >= -90 && elevationDeg <= 90)) {
      throw new IllegalArgumentException(
          "not a direction: azimuth " + azimuthDeg + "°, elevation " + elevationDeg + "°");
    }
  }

  /** The direction of a vector, azimuth in (−180, 180]; the null vector gives straight ahead. */
  public static Direction ofVector(double x, double y, double z) {
    double level = Math.hypot(x, y);
    double azimuth = level == 0 ? 0 : Math.atan2(0 - x, y);
    double elevation = level == 0 && z == 0 ? 0 : Math.atan2(z, level);
    return new Direction(Math.toDegrees(azimuth), Math.toDegrees(elevation));
  }

  /** Share of the unit vector to the right. */
  public double x() {
    return -Math.sin(Math.toRadians(azimuthDeg)) * Math.cos(Math.toRadians(elevationDeg));
  }

  /** Share of the unit vector to the front. */
  public double y() {
    return Math.cos(Math.toRadians(azimuthDeg)) * Math.cos(Math.toRadians(elevationDeg));
  }

  /** Share of the unit vector upwards. */
  public double z() {
    return Math.sin(Math.toRadians(elevationDeg));
  }

  /** Cosine of the angle between the two, in [−1, 1]. */
  public double cosTo(Direction other) {
    return Math.cos(Math.toRadians(angleBetweenDeg(other)));
  }

  /** Angle between the two in degrees, 0 to 180; exact for small angles too. */
  public double angleBetweenDeg(Direction other) {
    double crossX = y() * other.z() - z() * other.y();
    double crossY = z() * other.x() - x() * other.z();
    double crossZ = x() * other.y() - y() * other.x();
    double dot = x() * other.x() + y() * other.y() + z() * other.z();
    return Math.toDegrees(Math.atan2(Math.hypot(Math.hypot(crossX, crossY), crossZ), dot));
  }

  /** The direction that looks the other way. */
  public Direction opposite() {
    return ofVector(-x(), -y(), -z());
  }
}
