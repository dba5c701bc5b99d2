package org.standoff.answers.stereo;

import java.util.List;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.fit.AtHand;
import org.standoff.pairs.fit.PicturedPlayer;

/** Keeps one question from taking the service for itself. */
final class FitCost {
  /**
   * Players times layouts in one pattern of one model: room for all shipped layouts with 60
   * microphones of 4 patterns and 12 players; some seconds of work at worst.
   */
  private static final long MOST = 20_000;

  private FitCost() {}

  static void refuseDear(
      References references,
      List<PicturedPlayer> players,
      List<PairLayout> layouts,
      List<AtHand> microphones) {
    long combinations =
        layouts.stream().mapToLong(layout -> ways(layout, microphones)).sum() * players.size();
    if (combinations > MOST) {
      references.fault(
          QuestionFault.of(
                  "/microphones",
                  QuestionFault.Kind.OUT_OF_RANGE,
                  "Too many combinations of players, layouts and patterns: ask in parts.")
              .found(combinations)
              .allowed("at most " + MOST));
    }
  }

  private static long ways(PairLayout layout, List<AtHand> microphones) {
    return microphones.stream()
        .flatMap(microphone -> microphone.patterns().stream())
        .filter(choice -> layout.patterns().contains(choice.name()))
        .distinct()
        .count();
  }
}
