package org.standoff.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.chain.GainVerdict;
import org.standoff.chain.Microphone;
import org.standoff.chain.Stage;

/**
 * Ranks microphones for one question. Requirements first, each of them hard; then what clips at the
 * guarded percentile loses to what does not; then the preferences, weighed by the style. The order
 * in which the microphones come does not matter.
 */
public final class Adviser {
  private static final List<Requirement> REQUIREMENTS =
      List.of(new PhantomRequirement(), new NoPhantomRequirement(), new AirJetRequirement());

  /** Scores nearer than this are equal: nobody hears a hundredth of a decibel. */
  private static final double EQUAL_POINTS = 0.01;

  private final Assessor assessor;

  public Adviser(Question question) {
    this.assessor = new Assessor(question);
  }

  /** The assessor that the ranking rests on. */
  public Assessor assessor() {
    return assessor;
  }

  /** Ranks the microphones. */
  public Advice advise(Collection<Microphone> microphones) {
    List<Refusal> refused = new ArrayList<>();
    List<Scored> clean = new ArrayList<>();
    List<Scored> clipping = new ArrayList<>();
    for (Microphone microphone : microphones) {
      Optional<Refusal> refusal = refusal(microphone);
      if (refusal.isPresent()) {
        refused.add(refusal.get());
        continue;
      }
      Assessment chosen = SettingsChoice.choose(assessor, microphone);
      if (chosen.levels().clips()) {
        clipping.add(new Scored(chosen, chosen.levels().guarded().leastDb()));
      } else {
        clean.add(new Scored(chosen, score(chosen)));
      }
    }
    List<Scored> ranking = clean;
    if (clean.isEmpty()) {
      ranking = clipping;
    } else {
      clipping.forEach(scored -> refused.add(clips(scored.assessment())));
    }
    refused.sort(Comparator.comparing(Refusal::microphoneId));
    return new Advice(ranked(ranking), refused);
  }

  private record Scored(Assessment assessment, double points) {
    long step() {
      return Math.round(points / EQUAL_POINTS);
    }
  }

  private Optional<Refusal> refusal(Microphone microphone) {
    for (Requirement requirement : REQUIREMENTS) {
      Optional<Refusal> refusal = requirement.refusal(microphone, assessor.question());
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  /** The preferences behind a candidate's score, with their reasons. */
  public List<Weighed> weighed(Assessment chosen) {
    Question question = assessor.question();
    return List.of(
        IsolationPreference.weigh(chosen.view(), question),
        EvennessPreference.weigh(chosen.view(), question),
        HeadroomPreference.weigh(chosen, question),
        QuietPreference.weigh(chosen, question));
  }

  private static List<Ranked> ranked(List<Scored> scored) {
    scored.sort(
        Comparator.comparingLong(Scored::step)
            .reversed()
            .thenComparing(s -> s.assessment().microphone().id()));
    List<Ranked> ranked = new ArrayList<>(scored.size());
    int rank = 0;
    for (int i = 0; i < scored.size(); i++) {
      Scored here = scored.get(i);
      if (i == 0 || here.step() != scored.get(i - 1).step()) {
        rank = i + 1;
      }
      ranked.add(new Ranked(rank, here.points(), here.assessment()));
    }
    return ranked;
  }

  private double score(Assessment chosen) {
    Question question = assessor.question();
    return IsolationPreference.points(chosen.view(), question)
        + EvennessPreference.points(chosen.view(), question)
        + HeadroomPreference.points(chosen, question)
        + QuietPreference.points(chosen, question);
  }

  private Refusal clips(Assessment chosen) {
    Stage first = chosen.levels().guarded().first();
    double left = chosen.levels().guarded().of(first);
    return new Refusal(
        chosen.microphone().id(),
        chosen.microphone().title(),
        "level",
        "guarded_headroom_db",
        OptionalDouble.of(left),
        OptionalDouble.of(0),
        String.format(
            Locale.ROOT,
            "%s clips by %.1f dB at the %s, with the best of its settings (%s, %.0f dB of pads)",
            clipping(first, chosen),
            -left,
            assessor.question().style().guardedWords(),
            chosen.settings().pattern().name().id(),
            chosen.settings().totalPadDb()));
  }

  /** Which stage clips, in words: behind a preamp that can't go lower it is the gain's doing. */
  private static String clipping(Stage first, Assessment chosen) {
    return switch (first) {
      case ELECTRONICS -> "the microphone";
      case PREAMP_INPUT -> "the preamp's input";
      case PREAMP_OUTPUT, CONVERTER ->
          chosen.levels().loudest().gain().verdict() == GainVerdict.BELOW_RANGE
              ? "the preamp's least gain is too much and the " + words(first)
              : "the " + words(first);
    };
  }

  private static String words(Stage stage) {
    return stage.id().replace('-', ' ');
  }
}
