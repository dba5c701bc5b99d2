package org.standoff.advice;

import java.util.OptionalDouble;
import org.standoff.chain.Gain;
import org.standoff.chain.Headrooms;

/**
 * The question turned round: how near may the microphone come and how loud may it get, with its
 * pattern, filter and pads as they are and the gain set anew.
 *
 * @param nearestForWantedM nearest distance, for both of a pair, that leaves the wanted headroom at
 *     the guarded percentile, in m; absent where none within reach does
 * @param nearestUnclippedM nearest distance that does not clip there, in m
 * @param loudestForWantedDbSpl typical peak at the capsule that still leaves the wanted headroom
 * @param loudestUnclippedDbSpl typical peak at the capsule that just does not clip at the guarded
 *     percentile
 */
public record Limits(
    OptionalDouble nearestForWantedM,
    OptionalDouble nearestUnclippedM,
    double loudestForWantedDbSpl,
    double loudestUnclippedDbSpl) {

  /** Nearest distance that is looked at, in m. */
  public static final double NEAREST_M = 0.01;

  /** Farthest distance that is looked at, in m. */
  public static final double FARTHEST_M = 30;

  /** Halvings of the distance on a logarithmic scale: to a thousandth of it, 0.01 dB. */
  private static final int HALVINGS = 13;

  /** The limits of settings that were assessed for a question. */
  public static Limits of(Assessor assessor, Assessment assessment) {
    Question question = assessor.question();
    double wanted = question.style().wantedHeadroomDb();
    double left = leftAtLeastGainDb(assessor, assessment);
    double typical = loudestPeakDb(assessor);
    return new Limits(
        nearestM(assessor, assessment, wanted),
        nearestM(assessor, assessment, 0),
        typical + left - wanted,
        typical + left);
  }

  /** Guarded headroom once the gain is turned down as far as it goes, in dB. */
  private static double leftAtLeastGainDb(Assessor assessor, Assessment assessment) {
    Headrooms guarded = assessment.levels().guarded();
    Gain gain = assessment.levels().loudest().gain();
    double down = gain.setDb() - assessor.question().preamp().gain().leastDb();
    return new Headrooms(
            guarded.electronicsDb(),
            guarded.preampInputDb(),
            guarded.preampOutputDb() + down,
            guarded.converterDb() + down)
        .leastDb();
  }

  private static double loudestPeakDb(Assessor assessor) {
    double loudest = Double.NEGATIVE_INFINITY;
    for (Arrival arrival : assessor.arrivals()) {
      loudest = Math.max(loudest, arrival.peak().typicalDb());
    }
    return loudest;
  }

  private static OptionalDouble nearestM(
      Assessor assessor, Assessment assessment, double neededDb) {
    if (leftAtDb(assessor, assessment, FARTHEST_M) < neededDb) {
      return OptionalDouble.empty();
    }
    if (leftAtDb(assessor, assessment, NEAREST_M) >= neededDb) {
      return OptionalDouble.of(NEAREST_M);
    }
    double near = Math.log(NEAREST_M);
    double far = Math.log(FARTHEST_M);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (near + far) / 2;
      if (leftAtDb(assessor, assessment, Math.exp(middle)) >= neededDb) {
        far = middle;
      } else {
        near = middle;
      }
    }
    return OptionalDouble.of(Math.exp(far));
  }

  private static double leftAtDb(Assessor assessor, Assessment assessment, double distanceM) {
    Assessor there = assessor.at(here -> distanceM);
    PatternView view = there.viewOf(assessment);
    return there.levels(assessment.microphone(), view, assessment.settings()).guarded().leastDb();
  }
}
