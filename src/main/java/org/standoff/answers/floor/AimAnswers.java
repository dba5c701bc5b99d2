package org.standoff.answers.floor;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Coordinates;
import org.standoff.answers.References;
import org.standoff.floor.AimAdvice;
import org.standoff.floor.AimLimits;
import org.standoff.floor.AimPlan;
import org.standoff.floor.AimSearch;
import org.standoff.floor.AimSetting;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.PlacedBarrier;

/** Answers how microphones are best aimed. */
@ApplicationScoped
public class AimAnswers {
  private final AnswerContext context;

  AimAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public AimAnswer answer(AimQuestion asked) {
    References references = context.references();
    BleedAnswers.refuseWithoutMicrophones(references, asked.floor());
    ResolvedFloor floor = FloorResolver.resolve(references, asked.floor());
    int order = FloorCost.order(asked.order(), floor);
    AimLimitsResolver resolver = new AimLimitsResolver(references, asked, floor);
    Map<String, AimLimits> limits = resolver.limits();
    List<PlacedBarrier> places = resolver.places();
    references.refuseFaulty();
    context
        .budget()
        .take(FloorCost.aimsMs(floor.plan(), order, resolver.arrivals(limits.values(), order)));
    AimPlan plan = new AimSearch(floor.plan(), order).best(limits, places);
    return new AimAnswer(
        FloorAsAsked.of(floor),
        order,
        plan.advice().stream().map(AimAnswers::aimed).toList(),
        plan.barrier().map(BarrierPlace::of),
        FloorBasis.cautions(floor),
        FloorBasis.of(context, references, floor, BleedMatrix.of(floor.plan(), order).validity()));
  }

  private static AimAnswer.AimedMicrophone aimed(AimAdvice advice) {
    return new AimAnswer.AimedMicrophone(
        advice.microphoneId(),
        Told.figure(advice.gainDb()),
        advice.pointless(),
        because(advice),
        line(advice.today()),
        line(advice.best()),
        advice.second().map(AimAnswers::line));
  }

  private static String because(AimAdvice advice) {
    if (!Double.isFinite(advice.gainDb())) {
      return "nothing unwanted is heard";
    }
    return advice.pointless()
        ? String.format(
            Locale.ROOT,
            "no aim is worth a walk to the stand: the room brings %.1f dB of the %.1f dB that are"
                + " unwanted",
            advice.today().unwantedRoomDb(),
            advice.today().unwantedDb())
        : String.format(
            Locale.ROOT,
            "the unwanted falls by %.1f dB at equal gain, and %.1f dB of the wanted are given up",
            advice.gainDb(),
            Math.max(
                advice.today().wantedAtEqualGainDb() - advice.best().wantedAtEqualGainDb(), 0));
  }

  private static AimAnswer.AimLine line(AimSetting setting) {
    return new AimAnswer.AimLine(
        Coordinates.of(setting.position()),
        setting.aim().azimuthDeg(),
        setting.aim().elevationDeg(),
        setting.pattern().name(),
        Told.figure(setting.wantedDb()),
        Told.figure(setting.unwantedDb()),
        Told.figure(setting.unwantedRoomDb()),
        Told.figure(setting.wantedAtEqualGainDb()),
        Told.figure(setting.unwantedAtEqualGainDb()));
  }
}
