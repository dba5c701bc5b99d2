package org.standoff.pairs.listening;

import java.util.List;

/**
 * Measured images for level alone and for time alone, straight between the points; both images add
 * in degrees. Past a table's last point its image stays, since nothing was measured there.
 *
 * @param levelPoints images by level difference in dB
 * @param timePoints images by time difference in ms
 * @param halfBaseDeg angle of a loudspeaker from the middle in the study, above 0
 */
public record MeasuredPoints(
    Study study, List<Point> levelPoints, List<Point> timePoints, double halfBaseDeg)
    implements ListeningModel {
  /**
   * One measured image.
   *
   * @param difference in dB or ms, above 0
   * @param imageDeg where listeners heard it, above 0
   */
  public record Point(double difference, double imageDeg) {}

  /**
   * @throws IllegalArgumentException when a table is empty, or doesn't rise from point to point:
   *     neither the difference nor the image may fall back
   */
  public MeasuredPoints {
    Figure.aboveZero("half the base", halfBaseDeg);
    levelPoints = List.copyOf(levelPoints);
    timePoints = List.copyOf(timePoints);
    mustRise(levelPoints);
    mustRise(timePoints);
  }

  @Override
  public double sidewaysPct(double levelDb, double timeMs) {
    double imageDeg = imageDeg(levelPoints, levelDb) + imageDeg(timePoints, timeMs);
    return SIDE_PCT * imageDeg / halfBaseDeg;
  }

  private static double imageDeg(List<Point> points, double difference) {
    double size = Math.abs(difference);
    double fromDifference = 0;
    double fromDeg = 0;
    for (Point point : points) {
      if (size <= point.difference) {
        double share = (size - fromDifference) / (point.difference - fromDifference);
        return Math.copySign(fromDeg + share * (point.imageDeg - fromDeg), difference);
      }
      fromDifference = point.difference;
      fromDeg = point.imageDeg;
    }
    return Math.copySign(fromDeg, difference);
  }

  private static void mustRise(List<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a table of measured images needs a point");
    }
    double difference = 0;
    double imageDeg = 0;
    for (Point point : points) {
      if (!(point.difference > difference && point.imageDeg >= imageDeg)
          || !Double.isFinite(point.difference + point.imageDeg)) {
        throw new IllegalArgumentException(
            "measured images must rise from point to point; " + point + " doesn't");
      }
      difference = point.difference;
      imageDeg = point.imageDeg;
    }
  }
}
