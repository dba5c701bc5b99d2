package org.standoff.answers.floor;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standoff.acoustics.UncertainDb;
import org.standoff.acoustics.Validity;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.Range;
import org.standoff.answers.References;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.DayPart;
import org.standoff.floor.EuActionValue;
import org.standoff.floor.ExposureReport;
import org.standoff.floor.ExposureRule;
import org.standoff.floor.FloorFault;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.FloorSource;
import org.standoff.floor.Seat;
import org.standoff.floor.SeatExposure;

/** Answers what a day does to ears. */
@ApplicationScoped
public class ExposureAnswers {
  private static final double HOURS_OF_A_DAY = 24;

  private final AnswerContext context;

  ExposureAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public ExposureAnswer answer(ExposureQuestion asked) {
    References references = context.references();
    ResolvedFloor floor = FloorResolver.resolve(references, asked.floor());
    int order = FloorCost.order(asked.order(), floor);
    List<DayPart> day = day(references, floor, asked);
    List<Seat> seats =
        asked.seats().stream()
            .map(seat -> new Seat(seat.id(), seat.id(), seat.positionM().point()))
            .toList();
    FloorPlan heard = ExposureReport.heardAt(floor.plan(), seats);
    refuseImpossible(references, heard, seats);
    context.budget().take(FloorCost.exposureMs(heard, order, day.size()));
    ExposureReport report = ExposureReport.of(floor.plan(), order, seats, day);
    List<Validity> validity = new ArrayList<>(floor.plan().room().air().validity());
    return new ExposureAnswer(
        FloorAsAsked.of(floor),
        order,
        report.seats().stream().map(seat -> seat(seat, day)).toList(),
        Arrays.stream(ExposureRule.values())
            .map(rule -> new ExposureAnswer.RuleLine(rule, rule.criterionDba(), rule.exchangeDb()))
            .toList(),
        Arrays.stream(EuActionValue.values())
            .map(value -> new ExposureAnswer.EuValueLine(value, value.dailyDba(), value.peakPa()))
            .toList(),
        report.cautions(),
        FloorBasis.of(context, references, floor, validity));
  }

  private static void refuseImpossible(References references, FloorPlan heard, List<Seat> seats) {
    List<String> ids = seats.stream().map(Seat::id).toList();
    for (FloorFault fault : heard.faults()) {
      boolean twice = fault.code().equals("same-id-twice");
      int at = twice ? ids.lastIndexOf(fault.subject()) : ids.indexOf(fault.subject());
      references.fault(
          QuestionFault.of(
                  "/seats/" + at + (twice ? "/id" : "/position_m"),
                  twice ? QuestionFault.Kind.CONTRADICTION : QuestionFault.Kind.OUT_OF_RANGE,
                  fault.subject() + ": " + fault.detail() + ".")
              .found(fault.found())
              .allowed(fault.allowed()));
    }
    references.refuseFaulty();
  }

  private static List<DayPart> day(
      References references, ResolvedFloor floor, ExposureQuestion asked) {
    List<String> all = floor.plan().sources().stream().map(FloorSource::id).toList();
    List<DayPart> day = new ArrayList<>();
    for (int i = 0; i < asked.day().size(); i++) {
      ExposureQuestion.PlayedHours part = asked.day().get(i);
      String pointer = "/day/" + i;
      List<String> sounding = part.sounding() == null ? all : part.sounding();
      Map<String, Double> louder = part.louderDb() == null ? Map.of() : part.louderDb();
      for (int j = 0; j < sounding.size(); j++) {
        known(references, sounding.get(j), all, pointer + "/sounding/" + j);
      }
      louder.keySet().forEach(name -> known(references, name, sounding, pointer + "/louder_db"));
      Map<String, Double> soundingDb = new HashMap<>();
      sounding.forEach(name -> soundingDb.put(name, louder.getOrDefault(name, 0.0)));
      day.add(new DayPart(part.title(), part.hours(), soundingDb));
    }
    double hours = day.stream().mapToDouble(DayPart::hours).sum();
    if (hours > HOURS_OF_A_DAY) {
      references.fault(
          QuestionFault.of(
                  "/day", QuestionFault.Kind.OUT_OF_RANGE, "A day has no more than 24 hours.")
              .found(hours)
              .allowed("at most 24 h in all"));
    }
    return day;
  }

  private static void known(
      References references, String name, List<String> known, String pointer) {
    if (!known.contains(name)) {
      references.fault(
          QuestionFault.of(pointer, QuestionFault.Kind.UNKNOWN_VALUE, "No such source sounds here.")
              .found(name)
              .allowed(String.join(", ", known))
              .suggestion(NearMiss.of(name, known)));
    }
  }

  private static ExposureAnswer.SeatLine seat(SeatExposure seat, List<DayPart> day) {
    return new ExposureAnswer.SeatLine(
        seat.seatId(),
        IntStream.range(0, day.size())
            .mapToObj(
                i ->
                    new ExposureAnswer.PartLine(
                        day.get(i).title(), day.get(i).hours(), range(seat.partsDba().get(i))))
            .toList(),
        range(seat.dailyDba()),
        seat.doses().stream()
            .map(
                dose ->
                    new ExposureAnswer.DoseLine(
                        dose.rule(), dose.lowPercent(), dose.typicalPercent(), dose.highPercent()))
            .toList(),
        seat.peakDb().map(Range::of),
        seat.reached(),
        seat.perhapsReached());
  }

  /** Silence has no level. */
  private static Optional<Range> range(UncertainDb figure) {
    return Double.isFinite(figure.typicalDb()) ? Optional.of(Range.of(figure)) : Optional.empty();
  }
}
