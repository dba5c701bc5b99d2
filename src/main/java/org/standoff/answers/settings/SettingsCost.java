package org.standoff.answers.settings;

import java.util.Collection;
import org.standoff.advice.Question;
import org.standoff.chain.Microphone;

/**
 * CPU time that settings take, estimated from the sizes of their question; measured over HTTP, with
 * what it takes to explain the best.
 */
final class SettingsCost {
  private static final double MS_PER_QUESTION = 0.5;

  /** A microphone that is explained. */
  private static final double MS_PER_EXPLAINED = 0.3;

  /** A pattern that hears one source. */
  private static final double MS_PER_HEARD = 0.003;

  /** A pattern with one combination of pads. */
  private static final double MS_PER_CHAIN = 0.001;

  private SettingsCost() {}

  /**
   * In ms.
   *
   * @param limit how many microphones may be explained
   */
  static double ms(Question question, Collection<Microphone> microphones, int limit) {
    double heard =
        question.positions().size() * (1.0 + question.surroundings().neighbours().size());
    double padsBehind =
        (1.0 + question.inLinePadsDb().size()) * (1.0 + question.preamp().padsDb().size());
    double ms = MS_PER_QUESTION + MS_PER_EXPLAINED * Math.min(limit, microphones.size());
    for (Microphone microphone : microphones) {
      int patterns =
          microphone.outputs().stream().mapToInt(output -> output.patterns().size()).sum();
      double chains = padsBehind * (1 + microphone.pads().size());
      ms += patterns * (heard * MS_PER_HEARD + chains * MS_PER_CHAIN);
    }
    return ms;
  }
}
