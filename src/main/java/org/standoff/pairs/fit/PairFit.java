package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.Parameter;

/**
 * Finds the pairs that spread given players over a wished share of the loudspeaker base. Measures
 * are roots, not the nearest points of a grid: asked for its geometry, a solution returns the wish.
 * The same question has the same answer.
 */
public final class PairFit {
  /** Measures closer than this are the same solution reached twice. */
  private static final double SAME_WITHIN = 1e-6;

  private PairFit() {}

  public static FitAnswer answer(FitQuestion question) {
    List<FitSolution> solutions = new ArrayList<>();
    Set<WhyNot> whyNot = new LinkedHashSet<>();
    for (PairLayout layout : question.layouts()) {
      fit(question, layout, solutions, whyNot);
    }
    return new FitAnswer(Ranking.ranked(solutions), List.copyOf(whyNot));
  }

  private static void fit(
      FitQuestion question, PairLayout layout, List<FitSolution> solutions, Set<WhyNot> whyNot) {
    double leastM = layout.range(Parameter.SPACING).least();
    if (leastM > question.barMostM()) {
      whyNot.add(new WhyNot.BarTooShort(layout.id(), leastM, question.barMostM()));
      return;
    }
    if (allBehind(question)) {
      whyNot.add(new WhyNot.AllBehind(layout.id(), question.players().size()));
      return;
    }
    List<Candidate> candidates = Candidate.of(layout, question.microphones());
    if (candidates.isEmpty()) {
      whyNot.add(new WhyNot.NoMicrophones(layout.id(), Candidate.alikeNeeded(layout)));
    }
    for (Candidate candidate : candidates) {
      fit(new CandidateFit(question, candidate).attempts(), solutions, whyNot);
    }
  }

  private static void fit(List<Attempt> attempts, List<FitSolution> solutions, Set<WhyNot> whyNot) {
    List<FitSolution> found = new ArrayList<>();
    List<WhyNot> failed = new ArrayList<>();
    for (Attempt attempt : attempts) {
      if (attempt instanceof Attempt.Found one) {
        if (found.stream().noneMatch(other -> isSame(other, one.solution()))) {
          found.add(one.solution());
        }
      } else if (attempt instanceof Attempt.Failed one) {
        failed.add(one.reason());
      }
    }
    solutions.addAll(found);
    if (found.isEmpty()) {
      whyNot.add(nearest(failed));
    }
  }

  /** Of the ways in which a candidate failed, the one that came nearest to the span. */
  private static WhyNot nearest(List<WhyNot> failed) {
    WhyNot nearest = failed.get(0);
    for (WhyNot reason : failed) {
      if (reason instanceof WhyNot.SpanOutOfReach span
          && nearest instanceof WhyNot.SpanOutOfReach best
          && miss(span) < miss(best)) {
        nearest = reason;
      }
    }
    return nearest;
  }

  private static double miss(WhyNot.SpanOutOfReach span) {
    return Math.abs(span.reachedPct() - span.wishedPct());
  }

  private static boolean isSame(FitSolution one, FitSolution other) {
    return Math.abs(one.distanceM() - other.distanceM()) < SAME_WITHIN
        && Parameter.all().stream()
            .allMatch(parameter -> isSame(one.measures(), other.measures(), parameter));
  }

  private static boolean isSame(PairParameters one, PairParameters other, Parameter parameter) {
    return Math.abs(one.get(parameter) - other.get(parameter)) < SAME_WITHIN;
  }

  private static boolean allBehind(FitQuestion question) {
    PairPlace place = question.stand().at(question.stand().distanceM().usual());
    return question.players().stream()
        .allMatch(player -> place.toPair(player.position()).yM() <= 0);
  }
}
