package org.standoff.pairs.fit;

import java.util.List;

/**
 * What {@link PairFit} found.
 *
 * @param solutions best first
 * @param whyNot one or more for each layout that came to nothing, in the question's order
 */
public record FitAnswer(List<FitSolution> solutions, List<WhyNot> whyNot) {
  public FitAnswer {
    solutions = List.copyOf(solutions);
    whyNot = List.copyOf(whyNot);
  }
}
