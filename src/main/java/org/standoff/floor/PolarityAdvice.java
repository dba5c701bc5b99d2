package org.standoff.floor;

/**
 * Whether a microphone should be inverted against the one that the sound reaches first. Two views,
 * for the engineer to listen to where they differ.
 *
 * @param invertBySide because it looks at the other side of what moves, or hears the source in a
 *     rear lobe that turns it over; true well below half a wave of path difference (common
 *     practice)
 * @param invertBySum because the sum below 355 Hz is stronger so
 * @param sumNormalDb that sum as it is
 * @param sumInvertedDb that sum with the polarity inverted
 */
public record PolarityAdvice(
    boolean invertBySide, boolean invertBySum, double sumNormalDb, double sumInvertedDb) {

  static PolarityAdvice of(SignedArrival first, SignedArrival other) {
    double normalDb = first.lowSumDb(other);
    double invertedDb = first.lowSumDb(other.flipped());
    return new PolarityAdvice(
        first.inverted() != other.inverted(), invertedDb > normalDb, normalDb, invertedDb);
  }

  /** Whether both views say the same. */
  public boolean agreed() {
    return invertBySide == invertBySum;
  }
}
