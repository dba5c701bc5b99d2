package org.standoff.advice;

/**
 * One preference, weighed: the reason record behind a rank.
 *
 * @param preference its name
 * @param figureDb the figure that was weighed, in dB
 * @param weight points per dB
 * @param points what it adds to the score
 * @param because the reason in words
 */
public record Weighed(
    String preference, double figureDb, double weight, double points, String because) {

  static Weighed of(String preference, double figureDb, double weight, String because) {
    double points = figureDb * weight;
    // nothing missing times a negative weight is a negative zero, which no reader expects
    return new Weighed(preference, figureDb, weight, points == 0 ? 0 : points, because);
  }
}
