package org.standoff.advice;

import java.util.Objects;
import java.util.Optional;
import org.standoff.chain.Filter;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.Settings;

/**
 * Chooses the settings of one microphone. A pattern that clips at the guarded percentile with every
 * pad is out; among the rest the style's isolation and evenness choose; then the filter; the pad
 * last. Only where every pattern clips does the largest margin decide.
 */
final class SettingsChoice {

  private record Option(PatternView view, PadChoice.Chosen best) {
    boolean clips() {
      return best.levels().clips();
    }

    double marginDb() {
      return best.levels().guarded().leastDb();
    }
  }

  private SettingsChoice() {}

  /** The settings of a microphone for the assessor's question. */
  static Assessment choose(Assessor assessor, Microphone microphone) {
    Question question = assessor.question();
    Optional<Filter> filter = FilterChoice.choose(microphone, question);
    Option best = null;
    for (PatternView view : assessor.views(microphone)) {
      Settings flat = new Settings(view.outputId(), view.pattern(), filter, Pad.OUT, 0, 0);
      Option option = new Option(view, PadChoice.choose(assessor, microphone, view, flat));
      if (best == null || better(option, best, question)) {
        best = option;
      }
    }
    Option chosen = Objects.requireNonNull(best, "a microphone has at least one pattern");
    return assessor.assess(microphone, chosen.view(), chosen.best().settings());
  }

  private static boolean better(Option option, Option than, Question question) {
    if (option.clips() != than.clips()) {
      return !option.clips();
    }
    if (option.clips()) {
      return option.marginDb() > than.marginDb();
    }
    return stylePoints(option.view(), question) > stylePoints(than.view(), question);
  }

  private static double stylePoints(PatternView view, Question question) {
    return IsolationPreference.points(view, question) + EvennessPreference.points(view, question);
  }
}
