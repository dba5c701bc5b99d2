package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order of solutions. Every one of them does what was wished, so the order weighs what is left,
 * all in per cent of the base: how far images stray from a proportional picture (mean over
 * players), half the disagreement between models (mean), 2 for each dB that the worst player loses
 * in mono, the miss where nothing was left to turn, 5 for capsules that aren't matched. The weights
 * are a judgement, not physics.
 */
final class Ranking {
  private static final double SPREAD_SHARE = 0.5;
  private static final double PER_MONO_DB = 2;
  private static final double UNMATCHED = 5;
  private static final double EQUAL_WITHIN = 1e-6;

  private Ranking() {}

  static double penalty(
      double missPct, double unevenPct, double spreadPct, double monoLossDb, boolean matched) {
    return missPct
        + unevenPct
        + SPREAD_SHARE * spreadPct
        + PER_MONO_DB * monoLossDb
        + (matched ? 0 : UNMATCHED);
  }

  static List<FitSolution> ranked(List<FitSolution> solutions) {
    List<FitSolution> sorted =
        solutions.stream()
            .sorted(
                Comparator.comparingDouble(FitSolution::penalty)
                    .thenComparing(solution -> solution.layout().id())
                    .thenComparing(FitSolution::pattern)
                    .thenComparing(solution -> solution.measures().toString()))
            .toList();
    List<FitSolution> ranked = new ArrayList<>();
    for (int at = 0; at < sorted.size(); at++) {
      boolean equal =
          at > 0 && sorted.get(at).penalty() - sorted.get(at - 1).penalty() < EQUAL_WITHIN;
      int rank = equal ? ranked.get(at - 1).rank() : at + 1;
      ranked.add(sorted.get(at).ranked(rank));
    }
    return List.copyOf(ranked);
  }
}
