package org.standoff.answers.stereo;

import java.util.List;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.fit.AtHand;
import org.standoff.pairs.fit.FitQuestion;

/** CPU time that a fit takes, estimated from the sizes of its question; measured over HTTP. */
final class FitCost {
  private static final double MS_PER_QUESTION = 2;

  /** A player, in one layout, in one pattern of one model. */
  private static final double MS_PER_COMBINATION = 0.1;

  private FitCost() {}

  static double ms(FitQuestion question) {
    long ways =
        question.layouts().stream().mapToLong(layout -> ways(layout, question.microphones())).sum();
    return MS_PER_QUESTION + ways * question.players().size() * MS_PER_COMBINATION;
  }

  private static long ways(PairLayout layout, List<AtHand> microphones) {
    return microphones.stream()
        .flatMap(microphone -> microphone.patterns().stream())
        .filter(choice -> layout.patterns().contains(choice.name()))
        .distinct()
        .count();
  }
}
