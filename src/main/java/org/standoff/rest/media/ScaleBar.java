package org.standoff.rest.media;

/** A bar that says how long a metre is in a picture. */
public final class ScaleBar {
  private static final double LONGEST = 90;
  private static final double TICK = 4;

  private ScaleBar() {}

  /**
   * Draws the longest bar of 1, 2 or 5 times a power of ten that fits, ending at {@code right}.
   *
   * @param perM length of a metre in the picture
   */
  public static void draw(Svg svg, Svg.At right, double perM) {
    double lengthM = nice(LONGEST / perM);
    Svg.At left = new Svg.At(right.x() - lengthM * perM, right.y());
    svg.line(left, right, Svg.Pen.LINE);
    svg.line(
        new Svg.At(left.x(), left.y() - TICK), new Svg.At(left.x(), left.y() + TICK), Svg.Pen.LINE);
    svg.line(
        new Svg.At(right.x(), right.y() - TICK),
        new Svg.At(right.x(), right.y() + TICK),
        Svg.Pen.LINE);
    svg.text(new Svg.At(right.x(), right.y() - 7), Svg.Anchor.END, 11, words(lengthM));
  }

  private static double nice(double mostM) {
    double decade = Math.pow(10, Math.floor(Math.log10(mostM)));
    double share = mostM / decade;
    return decade * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
  }

  private static String words(double lengthM) {
    return lengthM >= 1
        ? Words.of(lengthM, 0) + " m"
        : Words.of(lengthM * 100, lengthM >= 0.01 ? 0 : 1) + " cm";
  }
}
