package org.standoff.answers.floor;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Point3;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Coordinates;
import org.standoff.answers.Position;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.AlignedMicrophone;
import org.standoff.floor.Alignment;
import org.standoff.floor.AlignmentQuestion;
import org.standoff.floor.Comb;
import org.standoff.floor.DelayedMicrophone;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorSource;
import org.standoff.floor.OverheadPair;
import org.standoff.floor.PolarityAdvice;

/** Answers when one source reaches several microphones. */
@ApplicationScoped
public class AlignAnswers {
  private static final double USUAL_RATE_HZ = 48_000;

  /** Late enough that the pair keeps the image, early enough to be no echo (common practice). */
  private static final double USUAL_EXTRA_MS = 10;

  private final AnswerContext context;

  AlignAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public AlignAnswer answer(AlignQuestion asked) {
    References references = context.references();
    BleedAnswers.refuseWithoutMicrophones(references, asked.floor());
    ResolvedFloor floor = FloorResolver.resolve(references, asked.floor());
    AlignmentQuestion question = question(references, floor, asked);
    Alignment alignment = Alignment.of(question);
    return new AlignAnswer(
        FloorAsAsked.of(floor),
        question.sourceId(),
        question.sampleRateHz(),
        question.coldestC(),
        question.warmestC(),
        alignment.microphones().stream().map(AlignAnswers::arrival).toList(),
        alignment.strategies().entrySet().stream()
            .map(
                entry ->
                    new AlignAnswer.StrategyLine(
                        entry.getKey(),
                        entry.getValue().stream().map(AlignAnswers::delayed).toList()))
            .toList(),
        equalPath(references, floor, asked, question),
        FloorBasis.cautions(floor),
        FloorBasis.of(context, references, floor, alignment.validity()));
  }

  private static AlignmentQuestion question(
      References references, ResolvedFloor floor, AlignQuestion asked) {
    List<String> sources = floor.plan().sources().stream().map(FloorSource::id).toList();
    List<String> all = floor.plan().microphones().stream().map(FloorMicrophone::id).toList();
    known(references, asked.source(), sources, "/source", "No such source is on this floor.");
    List<String> microphones = asked.microphones() == null ? all : asked.microphones();
    List<String> pair = asked.pair() == null ? List.of() : asked.pair();
    for (int i = 0; i < microphones.size(); i++) {
      known(
          references,
          microphones.get(i),
          all,
          "/microphones/" + i,
          "No such microphone is on this floor.");
    }
    for (int i = 0; i < pair.size(); i++) {
      known(
          references,
          pair.get(i),
          microphones,
          "/pair/" + i,
          "The pair is of the microphones that are aligned.");
    }
    double temperatureC = floor.plan().room().air().temperatureC();
    double coldestC =
        or(asked.coldestC(), Math.min(temperatureC, or(asked.warmestC(), temperatureC)));
    double warmestC = or(asked.warmestC(), Math.max(temperatureC, coldestC));
    if (warmestC < coldestC) {
      references.fault(
          QuestionFault.of(
                  "/warmest_c",
                  QuestionFault.Kind.CONTRADICTION,
                  "The warmest is under the coldest.")
              .found(warmestC));
    }
    if (asked.equalPathFromM() != null && pair.size() != 2) {
      references.fault(
          QuestionFault.of(
              "/pair", QuestionFault.Kind.MISSING, "Equal paths are those of a pair: name two."));
    }
    references.refuseFaulty();
    return new AlignmentQuestion(
        floor.plan(),
        asked.source(),
        microphones.stream().distinct().toList(),
        pair,
        or(asked.sampleRateHz(), USUAL_RATE_HZ),
        or(asked.extraMs(), USUAL_EXTRA_MS),
        coldestC,
        warmestC);
  }

  private static void known(
      References references, String id, List<String> known, String pointer, String detail) {
    if (!known.contains(id)) {
      references.fault(
          QuestionFault.of(pointer, QuestionFault.Kind.UNKNOWN_VALUE, detail)
              .found(id)
              .allowed(String.join(", ", known))
              .suggestion(NearMiss.of(id, known)));
    }
  }

  private static Optional<AlignAnswer.EqualPath> equalPath(
      References references, ResolvedFloor floor, AlignQuestion asked, AlignmentQuestion question) {
    if (question.pairIds().size() != 2) {
      return Optional.empty();
    }
    Coordinates told = asked.equalPathFromM();
    Point3 from =
        told == null
            ? floor.plan().source(question.sourceId()).orElseThrow().position()
            : told.point();
    Point3 left = floor.plan().microphone(question.pairIds().get(0)).orElseThrow().position();
    Point3 right = floor.plan().microphone(question.pairIds().get(1)).orElseThrow().position();
    if (from.distanceToM(left) == 0 || from.distanceToM(right) == 0) {
      references.fault(
          QuestionFault.of(
              "/equal_path_from_m",
              QuestionFault.Kind.OUT_OF_RANGE,
              "A microphone of the pair is at this place itself."));
      references.refuseFaulty();
    }
    OverheadPair pair =
        OverheadPair.about(
            from,
            left,
            right,
            floor.plan().room().air().speedOfSoundMPerS(),
            question.sampleRateHz());
    return Optional.of(
        new AlignAnswer.EqualPath(
            Coordinates.of(from),
            pair.leftM(),
            pair.rightM(),
            pair.levelDifferenceDb(),
            pair.leadMs(),
            pair.leadSamples(),
            Position.of(pair.leftEqual()),
            Position.of(pair.rightEqual())));
  }

  private static AlignAnswer.ArrivalLine arrival(AlignedMicrophone microphone) {
    PolarityAdvice polarity = microphone.polarity();
    boolean first = Double.isInfinite(microphone.comb().levelDifferenceDb());
    return new AlignAnswer.ArrivalLine(
        microphone.microphoneId(),
        microphone.pathM(),
        microphone.arrivalMs(),
        microphone.arrivalSamples(),
        microphone.afterFirstMs(),
        microphone.afterFirstSamples(),
        microphone.driftSamples(),
        Told.figure(microphone.levelDb()),
        new AlignAnswer.PolarityLine(
            polarity.invertBySide(),
            polarity.invertBySum(),
            polarity.agreed(),
            Told.figure(polarity.sumNormalDb()),
            Told.figure(polarity.sumInvertedDb())),
        first ? Optional.empty() : Optional.of(comb(microphone.comb())),
        new AlignAnswer.PutBackLine(
            microphone.putBack().mmFor1Db(),
            microphone.putBack().mmForOneSample(),
            microphone.putBack().degFor1Db()));
  }

  private static AlignAnswer.DelayedLine delayed(DelayedMicrophone microphone) {
    return new AlignAnswer.DelayedLine(
        microphone.microphoneId(),
        microphone.delayMs(),
        microphone.delaySamples(),
        microphone.afterPairMs(),
        microphone.combWithPair().map(AlignAnswers::comb),
        Told.figure(microphone.lowSumDb()));
  }

  private static AlignAnswer.CombLine comb(Comb comb) {
    return new AlignAnswer.CombLine(
        Told.figure(comb.levelDifferenceDb()),
        comb.delayMs(),
        comb.inverted(),
        Told.figure(comb.rippleDb()),
        Told.figure(comb.firstNotchHz()),
        Told.figure(comb.notchSpacingHz()));
  }

  private static double or(@Nullable Double value, double usual) {
    return value == null ? usual : value;
  }
}
