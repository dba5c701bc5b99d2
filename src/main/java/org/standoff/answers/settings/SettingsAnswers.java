package org.standoff.answers.settings;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Advice;
import org.standoff.advice.Adviser;
import org.standoff.advice.Arrival;
import org.standoff.advice.Assessment;
import org.standoff.advice.Assessor;
import org.standoff.advice.Cautions;
import org.standoff.advice.Changes;
import org.standoff.advice.Cures;
import org.standoff.advice.Limits;
import org.standoff.advice.OneInput;
import org.standoff.advice.Question;
import org.standoff.advice.Ranked;
import org.standoff.advice.Reasons;
import org.standoff.advice.Refusal;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Basis;
import org.standoff.answers.Played;
import org.standoff.answers.Range;
import org.standoff.answers.References;
import org.standoff.answers.kit.FreeMicrophones;
import org.standoff.chain.Microphone;
import org.standoff.chain.Settings;
import org.standoff.floor.StandBalance;

/** Answers settings questions: resolve once, ask the core, represent with the basis. */
@ApplicationScoped
public class SettingsAnswers {
  /** How many failing microphones are listed; the count tells of the rest. */
  public static final int MOST_WHY_NOT = 50;

  private final AnswerContext context;
  private final FreeMicrophones freeMicrophones;

  SettingsAnswers(AnswerContext context, FreeMicrophones freeMicrophones) {
    this.context = context;
    this.freeMicrophones = freeMicrophones;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   * @throws org.standoff.kit.DatabaseLost where it asks for what is free and the database is gone
   */
  public SettingsAnswer answer(SettingsQuestion asked) {
    References references = context.references();
    ResolvedSettingsQuestion resolved =
        SettingsResolver.resolve(references, asked, freeMicrophones);
    int limit = asked.limit() == null ? SettingsQuestion.USUAL_LIMIT : asked.limit();
    Question question = resolved.question();
    Candidates candidates = resolved.candidates();
    context.budget().take(SettingsCost.ms(question, candidates.microphones(), limit));
    Adviser adviser = new Adviser(question);
    Advice advice = adviser.advise(candidates.microphones());
    List<Refusal> whyNot =
        Stream.concat(advice.refused().stream(), candidates.notFree().stream()).toList();
    List<Ranked> shown = advice.ranked().stream().limit(limit).toList();
    return new SettingsAnswer(
        asked(resolved),
        adviser.assessor().arrivals().stream().map(SettingsAnswers::atCapsule).toList(),
        shown.stream().map(ranked -> recommendation(adviser, ranked, asked)).toList(),
        candidates.microphones().size() + candidates.notFree().size(),
        whyNot.stream().limit(MOST_WHY_NOT).toList(),
        whyNot.size(),
        resolved.given().stream().map(given -> compared(adviser.assessor(), given)).toList(),
        oneInput(resolved, shown),
        Cautions.ofPlace(question, adviser.assessor().arrivals().get(0)),
        question.placement().custom(),
        basis(references, resolved).with(candidates.kitRevision()));
  }

  private static SettingsAnswer.Asked asked(ResolvedSettingsQuestion resolved) {
    Question question = resolved.question();
    return new SettingsAnswer.Asked(
        resolved.played().id(),
        question.placement().id(),
        question.placement().purpose(),
        question.positions().get(0).distanceM(),
        question.wantedFromHz(),
        resolved.preampId(),
        question.preamp().fullScaleDbu(),
        question.style().id(),
        question.style().guardedPercentile(),
        question.style().wantedHeadroomDb(),
        question.style().targetPeakDbfs(),
        resolved.roomId(),
        question.surroundings().backgroundDba(),
        question.surroundings().diffuseDbSpl());
  }

  private static SettingsAnswer.AtCapsule atCapsule(Arrival arrival) {
    return new SettingsAnswer.AtCapsule(
        arrival.position().distanceM(),
        Range.of(arrival.peak()),
        arrival.longTerm().db(),
        arrival.longTermDba());
  }

  private static SettingsAnswer.Recommendation recommendation(
      Adviser adviser, Ranked ranked, SettingsQuestion asked) {
    Assessor assessor = adviser.assessor();
    Question question = assessor.question();
    Assessment chosen = ranked.assessment();
    AssessmentView view = new AssessmentView(assessor, chosen);
    Limits limits = Limits.of(assessor, chosen);
    return new SettingsAnswer.Recommendation(
        ranked.rank(),
        chosen.microphone().id(),
        chosen.microphone().title(),
        ranked.verdict(question.style()),
        ranked.score(),
        view.settings(),
        view.headroomDb(),
        view.clipProbability(),
        view.firstToClip(),
        view.stages(),
        view.noise(),
        view.tone(),
        view.hears(),
        limits,
        Reasons.of(question, chosen),
        adviser.weighed(chosen),
        Changes.of(assessor, chosen),
        Cures.of(assessor, chosen, limits),
        Cautions.ofMicrophone(question, chosen.microphone()),
        counterMassKg(asked, chosen.microphone()));
  }

  private static OptionalDouble counterMassKg(SettingsQuestion asked, Microphone microphone) {
    Stand stand = asked.stand();
    if (stand == null || microphone.massG().isEmpty()) {
      return OptionalDouble.empty();
    }
    StandBalance balance =
        new StandBalance(
            microphone.massG().getAsDouble() / 1000,
            stand.boomM(),
            stand.boomKg(),
            stand.standKg(),
            stand.footEdgeM(),
            stand.counterArmM());
    // less than nothing: the stand holds without
    return OptionalDouble.of(Math.max(0, balance.counterMassKg()));
  }

  private static SettingsAnswer.Compared compared(
      Assessor assessor, ResolvedSettingsQuestion.Given given) {
    Microphone microphone = given.microphone();
    Settings settings = given.settings();
    Assessment assessment =
        assessor.assess(
            microphone,
            assessor.view(microphone, settings.outputId(), settings.pattern()),
            settings,
            given.gainDb());
    AssessmentView view = new AssessmentView(assessor, assessment);
    return new SettingsAnswer.Compared(
        microphone.id(),
        Ranked.verdict(assessment, assessor.question().style()),
        view.settings(),
        view.headroomDb(),
        view.clipProbability(),
        view.firstToClip(),
        view.stages(),
        view.noise(),
        view.tone(),
        view.hears());
  }

  private static Optional<DoublesOnOneInput> oneInput(
      ResolvedSettingsQuestion resolved, List<Ranked> shown) {
    if (resolved.doubles().isEmpty() || shown.isEmpty()) {
      return Optional.empty();
    }
    List<Played> played = new ArrayList<>();
    List<Assessor> assessors = new ArrayList<>();
    played.add(resolved.played());
    assessors.add(new Assessor(resolved.question()));
    for (ResolvedSettingsQuestion.Doubled doubled : resolved.doubles()) {
      played.add(doubled.played());
      assessors.add(new Assessor(doubled.question()));
    }
    Assessment best = shown.get(0).assessment();
    return Optional.of(
        DoublesOnOneInput.of(best.microphone().id(), played, OneInput.of(assessors, best)));
  }

  private Basis basis(References references, ResolvedSettingsQuestion resolved) {
    Question question = resolved.question();
    Set<Validity> validity = new LinkedHashSet<>();
    question.positions().forEach(position -> validity.addAll(Arrival.validity(question, position)));
    question
        .surroundings()
        .room()
        .ifPresent(room -> validity.addAll(room.validity(Octave.HZ_500, Octave.HZ_1K)));
    if (question.placement().spectrum().isEmpty()) {
      validity.add(Validity.PATTERN_RISE_NOT_COUNTED);
    }
    return new Basis(
        references.catalogue().revision(),
        context.engineVersion(),
        question.air().speedOfSoundMPerS(),
        question.air().speedLaw(),
        resolved.assumptions().told(),
        List.copyOf(validity),
        unknowns(resolved));
  }

  private static List<String> unknowns(ResolvedSettingsQuestion resolved) {
    double spread = resolved.question().level().peak().spreadDb();
    return List.of(
        String.format(
            Locale.ROOT,
            "how hard this player hits or blows: ± %.0f dB is allowed for; the line check moves"
                + " the answer most",
            spread),
        "how much of a peak's energy lies in each octave: the class of the spectrum is assumed",
        "how a microphone colours the sound: among equals the ear decides, not this list",
        "what is worn, wired wrong or switched otherwise than the sheet says");
  }
}
