package org.standoff.advice;

import java.util.Locale;

/** Headroom that is missing at the guarded percentile: a dB weighs like a dB of isolation. */
final class HeadroomPreference {
  private static final double POINTS_PER_DB = -1;

  private HeadroomPreference() {}

  static double points(Assessment assessment, Question question) {
    return POINTS_PER_DB * missingDb(assessment, question);
  }

  static Weighed weigh(Assessment assessment, Question question) {
    double missing = missingDb(assessment, question);
    return Weighed.of(
        "headroom",
        missing,
        POINTS_PER_DB,
        String.format(
            Locale.ROOT,
            "leaves %.1f dB at the %s where the style wants %.1f dB",
            assessment.levels().guarded().leastDb(),
            question.style().guardedWords(),
            question.style().wantedHeadroomDb()));
  }

  static double missingDb(Assessment assessment, Question question) {
    return Math.max(
        0, question.style().wantedHeadroomDb() - assessment.levels().guarded().leastDb());
  }
}
