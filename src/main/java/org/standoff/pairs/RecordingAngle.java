package org.standoff.pairs;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.standoff.pairs.listening.ListeningModel;

/**
 * The stereo recording angle: how far to each side of the pair a source may stand before its image
 * arrives at the loudspeaker. Seen from the middle of the pair, not the angle between capsules.
 *
 * @param modelId id of the study whose limit was the criterion
 * @param distanceM distance of the sources from the middle of the pair; empty for far ones
 * @param leftDeg smallest angle to the left that meets the limit, in (0, 180]; empty when none does
 * @param rightDeg the same to the right
 */
public record RecordingAngle(
    String modelId, OptionalDouble distanceM, OptionalDouble leftDeg, OptionalDouble rightDeg) {
  /** Step of the search, so the narrowest excursion over the limit that is sure to be seen. */
  private static final double STEP_DEG = 0.5;

  private static final double MOST_DEG = 180;
  private static final double REACHED_PCT = ListeningModel.SIDE_PCT * (1 - 1e-12);

  /** For sources so far away that the wave is plane. */
  public static RecordingAngle far(PairHearing hearing, ListeningModel model) {
    return of(hearing, model, OptionalDouble.empty());
  }

  /** For sources on a circle of {@code distanceM} > 0 round the middle of the pair. */
  public static RecordingAngle at(PairHearing hearing, ListeningModel model, double distanceM) {
    if (!(distanceM > 0 && Double.isFinite(distanceM))) {
      throw new IllegalArgumentException("a distance must be above 0 m, not " + distanceM);
    }
    return of(hearing, model, OptionalDouble.of(distanceM));
  }

  /** Left and right together in degrees; empty when a side has no limit. */
  public OptionalDouble totalDeg() {
    return leftDeg.isPresent() && rightDeg.isPresent()
        ? OptionalDouble.of(leftDeg.getAsDouble() + rightDeg.getAsDouble())
        : OptionalDouble.empty();
  }

  private static RecordingAngle of(
      PairHearing hearing, ListeningModel model, OptionalDouble distanceM) {
    double circleM = distanceM.orElse(Double.POSITIVE_INFINITY);
    return new RecordingAngle(
        model.study().id(),
        distanceM,
        firstDeg(angle -> sideways(hearing, model, angle, circleM) >= REACHED_PCT),
        firstDeg(angle -> -sideways(hearing, model, -angle, circleM) >= REACHED_PCT));
  }

  private static double sideways(
      PairHearing hearing, ListeningModel model, double azimuthDeg, double circleM) {
    StereoDifferences heard = hearing.inPlane(azimuthDeg, circleM);
    return model.sidewaysPct(heard.levelDb(), heard.timeMs());
  }

  private static OptionalDouble firstDeg(DoublePredicate reached) {
    for (double to = STEP_DEG; to <= MOST_DEG; to += STEP_DEG) {
      if (reached.test(to)) {
        return OptionalDouble.of(Crossing.between(reached, to - STEP_DEG, to));
      }
    }
    return OptionalDouble.empty();
  }
}
