package org.standoff.answers.headroom;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.AirJet;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.SourceLevel;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.UncertainDb;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Arrival;
import org.standoff.advice.Assessment;
import org.standoff.advice.Assessor;
import org.standoff.advice.Cautions;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.LinePhantom;
import org.standoff.advice.Position;
import org.standoff.advice.Question;
import org.standoff.advice.Ranked;
import org.standoff.advice.Surroundings;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Basis;
import org.standoff.answers.Played;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.Range;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.Styles;
import org.standoff.answers.settings.AssessmentView;
import org.standoff.answers.settings.GivenSettings;
import org.standoff.answers.settings.GivenSettingsResolver;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;
import org.standoff.chain.Reading;
import org.standoff.chain.Settings;

/** Answers headroom questions: the chain alone, at told settings. */
@ApplicationScoped
public class HeadroomAnswers {
  private static final double TOLD_AT_M = 1;

  private final AnswerContext context;

  HeadroomAnswers(AnswerContext context) {
    this.context = context;
  }

  private record Heard(Placement placement, SourceLevel level, double distanceM, boolean bare) {}

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public HeadroomAnswer answer(HeadroomQuestion asked) {
    References references = context.references();
    Assumptions assumptions = new Assumptions();
    Optional<Heard> heard = heard(references, asked, assumptions);
    Optional<Resolved<Microphone>> microphone =
        references.resolve(Microphone.class, asked.microphone(), "/microphone");
    Optional<Resolved<Preamp>> preamp = references.resolve(Preamp.class, asked.preamp(), "/preamp");
    Optional<HouseStyle> style =
        Styles.resolve(
            references,
            asked.style(),
            asked.guardedPercentile(),
            asked.wantedHeadroomDb(),
            asked.targetPeakDbfs());
    Optional<Settings> settings =
        microphone.isPresent() && preamp.isPresent()
            ? new GivenSettingsResolver(
                    references, microphone.get().item(), preamp.get().item(), "")
                .resolve(given(asked))
            : Optional.empty();
    references.refuseFaulty();
    Question question =
        question(asked, heard.orElseThrow(), preamp.orElseThrow().item(), style.orElseThrow());
    return answer(
        references,
        asked,
        heard.orElseThrow(),
        new Assessor(question),
        microphone.orElseThrow(),
        preamp.orElseThrow().id(),
        settings.orElseThrow(),
        assumptions);
  }

  private HeadroomAnswer answer(
      References references,
      HeadroomQuestion asked,
      Heard heard,
      Assessor assessor,
      Resolved<Microphone> microphone,
      String preampId,
      Settings settings,
      Assumptions assumptions) {
    OptionalDouble gain =
        asked.gainDb() == null ? OptionalDouble.empty() : OptionalDouble.of(asked.gainDb());
    var pattern = assessor.view(microphone.item(), settings.outputId(), settings.pattern());
    Assessment assessment = assessor.assess(microphone.item(), pattern, settings, gain);
    Assessment free =
        gain.isEmpty() ? assessment : assessor.assess(microphone.item(), pattern, settings);
    AssessmentView view = new AssessmentView(assessor, assessment);
    Question question = assessor.question();
    return new HeadroomAnswer(
        microphone.id(),
        preampId,
        Range.of(assessor.arrivals().get(0).peak()),
        view.settings(),
        Ranked.verdict(assessment, question.style()),
        view.headroomDb(),
        view.firstToClip(),
        view.clipProbability(),
        view.stages(),
        terms(assessment, question.preamp()),
        free.levels().loudest().gain().setDb(),
        noise(assessment, heard, asked),
        heard.bare() ? Optional.empty() : Optional.of(view.tone()),
        Cautions.ofMicrophone(question, microphone.item()),
        new Basis(
            references.catalogue().revision(),
            context.engineVersion(),
            question.air().speedOfSoundMPerS(),
            question.air().speedLaw(),
            assumptions.told(),
            validity(question, heard),
            List.of(
                String.format(
                    Locale.ROOT,
                    "how far the peak of a take lies from this one: ± %.0f dB is allowed for",
                    heard.level().peak().spreadDb()))));
  }

  private static Optional<Heard> heard(
      References references, HeadroomQuestion asked, Assumptions assumptions) {
    if ((asked.peakDbSpl() == null) == (asked.source() == null)) {
      references.fault(
          QuestionFault.of(
              "/peak_db_spl",
              asked.source() == null
                  ? QuestionFault.Kind.MISSING
                  : QuestionFault.Kind.CONTRADICTION,
              "Give peak_db_spl at the capsule, or a source: one of them."));
      return Optional.empty();
    }
    if (asked.source() == null) {
      return Optional.of(bare(asked));
    }
    return references
        .played(asked.source(), asked.placement(), asked.dynamic(), asked.levelOffsetDb(), "")
        .map(played -> heard(played, asked.distanceM(), assumptions));
  }

  private static Heard heard(Played played, @Nullable Double distanceM, Assumptions assumptions) {
    double usual = played.placement().level().atM();
    if (distanceM == null) {
      assumptions.add("the distance is taken as %.3g m, where the catalogue's level holds", usual);
    }
    return new Heard(
        played.placement(), played.level(), distanceM == null ? usual : distanceM, false);
  }

  /** A told peak at the capsule stands for a source of which nothing else is known. */
  private static Heard bare(HeadroomQuestion asked) {
    double peak = asked.peakDbSpl() == null ? 0 : asked.peakDbSpl();
    double spread = asked.spreadDb() == null ? 0 : asked.spreadDb();
    double longTerm = asked.levelDbSpl() == null ? 0 : asked.levelDbSpl();
    SourceLevel level =
        new SourceLevel(TOLD_AT_M, new UncertainDb(peak, spread), new RmsSpl(longTerm));
    Placement placement =
        new Placement(
            "capsule",
            "At the capsule",
            Purpose.WHOLE,
            new Radiator.Point(0),
            level,
            Optional.empty(),
            Directivity.OMNI,
            20,
            Optional.empty(),
            TOLD_AT_M,
            TOLD_AT_M,
            SourceSide.REFERENCE,
            AirJet.NONE,
            false,
            Optional.empty(),
            "told in the question");
    return new Heard(placement, level, TOLD_AT_M, true);
  }

  private static Question question(
      HeadroomQuestion asked, Heard heard, Preamp preamp, HouseStyle style) {
    double angle = asked.angleDeg() == null ? 0 : asked.angleDeg();
    OptionalDouble background =
        asked.backgroundNoiseDba() == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(asked.backgroundNoiseDba());
    return new Question(
        heard.placement(),
        heard.level(),
        Optional.empty(),
        List.of(new Position(heard.distanceM(), 0, angle, 0)),
        List.of(),
        preamp,
        List.of(),
        LinePhantom.FREE,
        new Surroundings(Optional.empty(), background, List.of(), OptionalDouble.empty()),
        Air.STANDARD,
        style);
  }

  private static GivenSettings given(HeadroomQuestion asked) {
    return new GivenSettings(
        asked.output(),
        asked.pattern(),
        asked.padDb(),
        asked.highPassHz(),
        asked.inLinePadDb(),
        asked.preampPadDb(),
        asked.gainDb());
  }

  private static HeadroomAnswer.Terms terms(Assessment assessment, Preamp preamp) {
    Reading reading = assessment.levels().loudest();
    return new HeadroomAnswer.Terms(
        assessment.microphone().bears(assessment.settings().pad()).db(),
        reading.peak().asSine().db(),
        reading.riseAtElectronicsDb(),
        reading.microphoneOutputDbu(),
        reading.loadingDb(),
        reading.preampInputDbu(),
        preamp.maximumInputDbu(),
        reading.peakDbfs() + preamp.fullScaleDbu(),
        preamp.maximumOutputDbu(),
        preamp.fullScaleDbu(),
        reading.peakDbfs());
  }

  private static HeadroomAnswer.Noise noise(
      Assessment assessment, Heard heard, HeadroomQuestion asked) {
    boolean known = !heard.bare() || asked.levelDbSpl() != null;
    return new HeadroomAnswer.Noise(
        assessment.noise().roomDba(),
        assessment.noise().microphoneDba(),
        assessment.noise().preampDba(),
        assessment.noise().totalDba(),
        assessment.noise().dominant(),
        known ? OptionalDouble.of(assessment.signalToNoiseDb()) : OptionalDouble.empty());
  }

  private static List<Validity> validity(Question question, Heard heard) {
    return heard.bare()
        ? List.of(Validity.PATTERN_RISE_NOT_COUNTED)
        : Arrival.validity(question, question.positions().get(0));
  }
}
