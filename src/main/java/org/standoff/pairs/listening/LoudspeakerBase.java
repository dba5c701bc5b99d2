package org.standoff.pairs.listening;

/**
 * Two loudspeakers and a listener.
 *
 * @param halfAngleDeg angle of a loudspeaker from the middle, above 0 and at most 90
 */
public record LoudspeakerBase(double halfAngleDeg) {
  /** Loudspeakers at ±30°, ITU-R BS.775. */
  public static final LoudspeakerBase STANDARD = new LoudspeakerBase(30);

  public LoudspeakerBase {
    if (!(halfAngleDeg > 0 && halfAngleDeg <= 90)) {
      throw new IllegalArgumentException(
          "half the base must be above 0° and at most 90°, not " + halfAngleDeg);
    }
  }

  /** Angle of an image in degrees, positive to the left, for a position of −100 to 100 %. */
  public double imageDeg(double positionPct) {
    return halfAngleDeg * positionPct / ListeningModel.SIDE_PCT;
  }

  /**
   * Image angle less the angle at which a proportional picture would put the source, in degrees:
   * image − θ·half base/(recording angle/2). Williams 1987.
   *
   * @param imageDeg where the image is, positive to the left
   * @param sourceDeg θ, where the source stands, positive to the left
   * @param recordingAngleDeg total stereo recording angle, above 0
   */
  public double angularDistortionDeg(double imageDeg, double sourceDeg, double recordingAngleDeg) {
    return imageDeg - sourceDeg * halfAngleDeg / (recordingAngleDeg / 2);
  }
}
