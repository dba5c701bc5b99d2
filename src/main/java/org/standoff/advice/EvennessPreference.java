package org.standoff.advice;

import java.util.Locale;

/** No bass rise from being near: a dB at the lowest wanted note costs the style's weight. */
final class EvennessPreference {
  private EvennessPreference() {}

  static double points(PatternView view, Question question) {
    return -question.style().evennessWeight() * Math.max(0, view.riseAtLowestDb());
  }

  static Weighed weigh(PatternView view, Question question) {
    return Weighed.of(
        "evenness",
        Math.max(0, view.riseAtLowestDb()),
        -question.style().evennessWeight(),
        String.format(
            Locale.ROOT,
            "rises %.1f dB at %s, the lowest wanted, from being near",
            Math.max(0, view.riseAtLowestDb()),
            question.wantedFromWords()));
  }
}
