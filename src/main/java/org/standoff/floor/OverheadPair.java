package org.standoff.floor;

import org.standoff.acoustics.Level;
import org.standoff.acoustics.Point3;

/**
 * Two overheads about one drum: where the paths are equal, the drum stands in the middle. Levels
 * and times are left minus right, times positive when the left leads.
 *
 * @param leftM path to the left one
 * @param rightM path to the right one
 * @param levelDifferenceDb by the point law at equal gain, 20 lg(right/left)
 * @param leadMs (right − left)/c
 * @param leadSamples the same in samples, not rounded
 * @param leftEqual where the left would have the right's path, on its line to the drum
 * @param rightEqual where the right would have the left's path, on its line to the drum
 */
public record OverheadPair(
    double leftM,
    double rightM,
    double levelDifferenceDb,
    double leadMs,
    double leadSamples,
    Point3 leftEqual,
    Point3 rightEqual) {

  /**
   * The pair about {@code drum}; moving one of the two is enough.
   *
   * @throws IllegalArgumentException when a microphone is at the drum itself
   */
  public static OverheadPair about(
      Point3 drum, Point3 left, Point3 right, double speedMPerS, double sampleRateHz) {
    double leftM = drum.distanceToM(left);
    double rightM = drum.distanceToM(right);
    if (!(leftM > 0 && rightM > 0 && speedMPerS > 0 && sampleRateHz > 0)) {
      throw new IllegalArgumentException(
          "paths, speed and rate must be above 0, not "
              + leftM
              + " m, "
              + rightM
              + " m, "
              + speedMPerS
              + " m/s, "
              + sampleRateHz
              + " Hz");
    }
    double leadMs = 1000 * (rightM - leftM) / speedMPerS;
    return new OverheadPair(
        leftM,
        rightM,
        Level.ofAmplitudeRatio(rightM / leftM),
        leadMs,
        leadMs * sampleRateHz / 1000,
        drum.moved(drum.directionTo(left), rightM),
        drum.moved(drum.directionTo(right), leftM));
  }
}
