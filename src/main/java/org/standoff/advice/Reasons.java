package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standoff.acoustics.SourceSide;
import org.standoff.chain.Gain;
import org.standoff.chain.Settings;
import org.standoff.chain.Stage;

/** Puts into words why the recommended settings are what they are. */
public final class Reasons {
  private Reasons() {}

  /** One reason a setting, in the order of the decisions. */
  public static List<Reason> of(Question question, Assessment chosen) {
    List<Reason> reasons = new ArrayList<>();
    reasons.add(pattern(question, chosen));
    reasons.add(filter(question, chosen));
    reasons.add(pad(question, chosen));
    reasons.add(gain(question, chosen));
    reasons.add(polarity(question));
    return List.copyOf(reasons);
  }

  private static Reason pattern(Question question, Assessment chosen) {
    boolean only =
        chosen.microphone().outputs().size() == 1
            && chosen.microphone().outputs().get(0).patterns().size() == 1;
    String why =
        chosen.levels().clips() && !only
            ? "every pattern clips at the guarded percentile; this one by least"
            : (only ? "the only one it has; it " : "")
                + IsolationPreference.weigh(chosen.view(), question).because()
                + "; "
                + EvennessPreference.weigh(chosen.view(), question).because();
    return new Reason("pattern", chosen.settings().pattern().name().id(), why);
  }

  private static Reason filter(Question question, Assessment chosen) {
    String words = Changes.words(chosen.settings().filter());
    double allowed = question.style().allowedFilterLossDb();
    String lowest = question.wantedFromWords();
    String why;
    if (chosen.settings().filter().isPresent()) {
      why =
          format(
              "the highest corner that costs at most %.1f dB at %s, the lowest wanted here:"
                  + " it costs %.1f dB",
              allowed, lowest, chosen.filterLossAtLowestDb());
    } else if (FilterChoice.offered(chosen.microphone(), question.preamp()).isEmpty()) {
      why = "neither microphone nor preamp has one";
    } else {
      why =
          format(
              "every corner costs more than %.1f dB at %s, the lowest wanted here",
              allowed, lowest);
    }
    return new Reason("filter", words, why);
  }

  private static Reason pad(Question question, Assessment chosen) {
    Settings settings = chosen.settings();
    double left = chosen.levels().guarded().leastDb();
    double wanted = question.style().wantedHeadroomDb();
    Stage first = chosen.levels().guarded().first();
    String value =
        settings.totalPadDb() == 0
            ? "out"
            : format(
                "%.0f dB (microphone %.0f, lead %.0f, preamp %.0f)",
                settings.totalPadDb(),
                settings.pad().padDb(),
                settings.inLinePadDb(),
                settings.preampPadDb());
    String why =
        left >= wanted
            ? format(
                "the least that leaves %.1f dB at the %s: it leaves %.1f dB, the %s"
                    + " is nearest",
                wanted, question.style().guardedWords(), left, first.id())
            : format(
                "none leaves %.1f dB at the %s; this one leaves most, %.1f dB at the" + " %s",
                wanted, question.style().guardedWords(), left, first.id());
    return new Reason("pad", value, why);
  }

  private static Reason gain(Question question, Assessment chosen) {
    Gain gain = chosen.levels().loudest().gain();
    String why =
        switch (gain.verdict()) {
          case WITHIN ->
              format(
                  "%.1f dB would put the typical peak at %.1f dBFS or keep %.1f dB at the guarded"
                      + " one, whichever is less; rounded down to the preamp's step",
                  gain.wantedDb(),
                  question.style().targetPeakDbfs(),
                  question.style().wantedHeadroomDb());
          case BELOW_RANGE ->
              format(
                  "%.1f dB would be right and the preamp's least is %.1f dB: a pad is needed",
                  gain.wantedDb(), gain.setDb());
          case ABOVE_RANGE ->
              format(
                  "%.1f dB would be right and the preamp's most is %.1f dB: the peak stays lower",
                  gain.wantedDb(), gain.setDb());
          case GIVEN -> "told in the question";
        };
    return new Reason("gain", format("%.1f dB", gain.setDb()), why);
  }

  private static Reason polarity(Question question) {
    return question.placement().side() == SourceSide.OPPOSITE
        ? new Reason(
            "polarity",
            "inverted",
            "it looks at the other side of the moving part than the source's first placement;"
                + " compare the low end of the sum both ways (common practice)")
        : new Reason("polarity", "normal", "it looks at the reference side of the source");
  }

  private static String format(String words, Object... figures) {
    return String.format(Locale.ROOT, words, figures);
  }
}
