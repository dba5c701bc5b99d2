package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.standoff.acoustics.Radiator;
import org.standoff.chain.Stage;

/** What would give the headroom that even the best settings leave missing. */
public final class Cures {
  private Cures() {}

  /** The cures; empty where nothing is missing. */
  public static List<Cure> of(Assessor assessor, Assessment chosen, Limits limits) {
    Question question = assessor.question();
    double missing = HeadroomPreference.missingDb(chosen, question);
    List<Cure> cures = new ArrayList<>();
    if (missing <= 0) {
      return cures;
    }
    for (Stage stage : Stage.values()) {
      double shortDb = question.style().wantedHeadroomDb() - chosen.levels().guarded().of(stage);
      if (shortDb > 0) {
        cures.add(at(stage, shortDb, assessor, chosen));
      }
    }
    boolean flat = question.placement().radiator() instanceof Radiator.Shell;
    if (!flat && limits.nearestForWantedM().isPresent()) {
      cures.add(
          new Cure(
              "farther",
              limits.nearestForWantedM(),
              missing,
              format("%.2f m or more", limits.nearestForWantedM().getAsDouble())));
    }
    cures.add(
        new Cure("softer", OptionalDouble.empty(), missing, format("%.1f dB softer", missing)));
    return cures;
  }

  private static Cure at(Stage stage, double shortDb, Assessor assessor, Assessment chosen) {
    return switch (stage) {
      case ELECTRONICS -> {
        double bears = chosen.microphone().bears(chosen.settings().pad()).db();
        yield new Cure(
            "another-microphone",
            OptionalDouble.empty(),
            shortDb,
            format("one that bears %.1f dB SPL (rms of a sine), its pad counted", bears + shortDb));
      }
      case PREAMP_INPUT ->
          new Cure(
              "in-line-pad",
              OptionalDouble.empty(),
              shortDb,
              format("a pad of %.1f dB or more in the lead or at the input", shortDb));
      case PREAMP_OUTPUT, CONVERTER ->
          new Cure(
              "another-preamp",
              OptionalDouble.empty(),
              shortDb,
              format("a preamp that goes %.1f dB lower, or a pad ahead of it", shortDb));
    };
  }

  private static String format(String words, Object... figures) {
    return String.format(Locale.ROOT, words, figures);
  }
}
