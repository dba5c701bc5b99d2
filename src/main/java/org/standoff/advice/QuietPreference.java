package org.standoff.advice;

import java.util.Locale;

/**
 * Noise that comes nearer to the source than the style wants. The room's noise is in the sum, so a
 * quiet microphone in a noisy room wins nothing.
 */
final class QuietPreference {
  private static final double POINTS_PER_DB = -1;

  private QuietPreference() {}

  static double points(Assessment assessment, Question question) {
    return POINTS_PER_DB * missingDb(assessment, question);
  }

  static Weighed weigh(Assessment assessment, Question question) {
    return Weighed.of(
        "quiet",
        missingDb(assessment, question),
        POINTS_PER_DB,
        String.format(
            Locale.ROOT,
            "noise of %.1f dB(A), mostly the %s, lies %.1f dB under the source; the style wants"
                + " %.0f dB",
            assessment.noise().totalDba(),
            assessment.noise().dominant(),
            assessment.signalToNoiseDb(),
            question.style().noiseDistanceDb()));
  }

  private static double missingDb(Assessment assessment, Question question) {
    return Math.max(0, question.style().noiseDistanceDb() - assessment.signalToNoiseDb());
  }
}
