package org.standoff.pairs.fit;

/** What came of one candidate in one order of its knobs. */
sealed interface Attempt {
  record Found(FitSolution solution) implements Attempt {}

  record Failed(WhyNot reason) implements Attempt {}
}
