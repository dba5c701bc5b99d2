package org.standoff.advice;

/**
 * Where a microphone stands at a source.
 *
 * @param distanceM from the source's reference point to the capsule, in m, &gt; 0
 * @param distanceSpreadM half of the range in which the distance really ends up, in m, ≥ 0
 * @param angleDeg how far off the source's axis it stands, 0..180°
 * @param aimOffDeg how far off its own axis it hears the source, 0..180°
 */
public record Position(
    double distanceM, double distanceSpreadM, double angleDeg, double aimOffDeg) {

  /** The same place at another distance, in m. */
  public Position at(double otherDistanceM) {
    return new Position(otherDistanceM, distanceSpreadM, angleDeg, aimOffDeg);
  }
}
