package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Several sources that one player doubles on, one at a time, on one input: one gain for all, with
 * what it leaves each of them, and the step that single gains would need.
 *
 * @param gainDb the one gain, in dB: that of the loudest
 * @param stepDb from the loudest source's own gain to the softest one's, in dB, ≥ 0
 * @param shares what each of them gets, in the order of the question
 */
public record OneInput(double gainDb, double stepDb, List<Share> shares) {

  /**
   * One of the sources at the one gain.
   *
   * @param ownGainDb the gain that it would get alone, in dB
   * @param peakDbfs where its typical peak arrives at the one gain
   * @param guardedHeadroomDb least headroom at the guarded percentile at the one gain, in dB
   * @param filterLossAtLowestDb what the common filter costs at its lowest wanted note, in dB
   * @param signalToNoiseDb over the noise at the one gain, in dB
   */
  public record Share(
      double ownGainDb,
      double peakDbfs,
      double guardedHeadroomDb,
      double filterLossAtLowestDb,
      double signalToNoiseDb) {}

  public OneInput {
    shares = List.copyOf(shares);
  }

  /**
   * Settings that were chosen for one of them, used for all.
   *
   * @param assessors one a source
   * @param chosen the common settings
   */
  public static OneInput of(List<Assessor> assessors, Assessment chosen) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    List<Double> own = new ArrayList<>();
    for (Assessor assessor : assessors) {
      double gain = gainDb(assess(assessor, chosen, OptionalDouble.empty()));
      own.add(gain);
      least = Math.min(least, gain);
      most = Math.max(most, gain);
    }
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < assessors.size(); i++) {
      Assessment at = assess(assessors.get(i), chosen, OptionalDouble.of(least));
      shares.add(
          new Share(
              own.get(i),
              at.levels().loudest().peakDbfs(),
              at.levels().guarded().leastDb(),
              at.filterLossAtLowestDb(),
              at.signalToNoiseDb()));
    }
    return new OneInput(least, most - least, shares);
  }

  private static Assessment assess(Assessor assessor, Assessment chosen, OptionalDouble gainDb) {
    PatternView view = assessor.viewOf(chosen);
    return assessor.assess(chosen.microphone(), view, chosen.settings(), gainDb);
  }

  private static double gainDb(Assessment assessment) {
    return assessment.levels().loudest().gain().setDb();
  }
}
