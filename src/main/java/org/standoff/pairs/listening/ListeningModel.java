package org.standoff.pairs.listening;

import java.util.OptionalDouble;

/**
 * Turns a level and a time difference into the place of the image between two loudspeakers. Every
 * model is odd: swapped channels negate its answer.
 */
public sealed interface ListeningModel
    permits TwoRegion, LinearFactors, StraightTrade, MeasuredPoints, LimitPolyline {
  /** A position at a loudspeaker, in per cent of the half base. */
  double SIDE_PCT = 100;

  Study study();

  /**
   * How far both differences together drive the image from the middle, in per cent of the way to
   * the loudspeaker: positive to the left, ±100 where the image arrives at one. May go on beyond;
   * {@link #imagePct} doesn't.
   *
   * @param levelDb left minus right in dB, finite
   * @param timeMs in ms, positive when the left leads, finite
   */
  double sidewaysPct(double levelDb, double timeMs);

  /** False for a model that only says when the image has arrived at the side. */
  default boolean placesImages() {
    return true;
  }

  /**
   * Position of the image, −100 (right) to +100 (left); empty when the model {@linkplain
   * #placesImages() places none}.
   *
   * @throws IllegalArgumentException when a difference isn't finite
   */
  default OptionalDouble imagePct(double levelDb, double timeMs) {
    if (!Double.isFinite(levelDb) || !Double.isFinite(timeMs)) {
      throw new IllegalArgumentException(
          "differences must be finite, not " + levelDb + " dB and " + timeMs + " ms");
    }
    return placesImages()
        ? OptionalDouble.of(Math.max(-SIDE_PCT, Math.min(SIDE_PCT, sidewaysPct(levelDb, timeMs))))
        : OptionalDouble.empty();
  }
}
