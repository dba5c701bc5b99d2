package org.standoff.advice;

import java.util.Locale;

/** Less of the unwanted, or more of it where the purpose is the room: the style's weight says. */
final class IsolationPreference {
  private IsolationPreference() {}

  static double points(PatternView view, Question question) {
    return view.isolationDb() * weight(question);
  }

  static Weighed weigh(PatternView view, Question question) {
    double weight = weight(question);
    return Weighed.of(
        "isolation",
        view.isolationDb(),
        weight,
        String.format(
            Locale.ROOT,
            "hears %.1f dB less of what is around than an omni would; for %s that counts %s",
            view.isolationDb(),
            question.placement().purpose().id(),
            weight > 0 ? "for it" : weight < 0 ? "against it, the room is wanted" : "nothing"));
  }

  private static double weight(Question question) {
    return question.style().isolationWeight(question.placement().purpose());
  }
}
