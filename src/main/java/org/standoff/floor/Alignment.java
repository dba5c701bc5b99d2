package org.standoff.floor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.Validity;

/**
 * Arrivals of one source in several microphones.
 *
 * @param speedMPerS speed of sound in the room's air
 * @param speedLaw by which law
 * @param microphones in order of arrival
 * @param strategies what delays would do; empty without a pair
 * @param validity what makes the figures doubtful
 */
public record Alignment(
    double speedMPerS,
    String speedLaw,
    List<AlignedMicrophone> microphones,
    Map<DelayStrategy, List<DelayedMicrophone>> strategies,
    List<Validity> validity) {

  public Alignment {
    microphones = List.copyOf(microphones);
    strategies = Collections.unmodifiableMap(new LinkedHashMap<>(strategies));
    validity = List.copyOf(validity);
  }

  /** What was heard by one microphone. */
  private record Line(FloorMicrophone microphone, BleedCell cell, SignedArrival arrival) {}

  /**
   * Answers {@code question}.
   *
   * @throws IllegalArgumentException when the floor has a fault, or lacks the source or a
   *     microphone
   */
  public static Alignment of(AlignmentQuestion question) {
    FloorPlan plan = question.plan();
    FloorSource source =
        plan.source(question.sourceId())
            .orElseThrow(() -> new IllegalArgumentException("no source " + question.sourceId()));
    List<FloorMicrophone> microphones = new ArrayList<>();
    for (String id : question.microphoneIds()) {
      microphones.add(
          plan.microphone(id)
              .orElseThrow(() -> new IllegalArgumentException("no microphone " + id)));
    }
    FloorPlan alone =
        new FloorPlan(
            plan.room(), plan.equivalentBox(), List.of(source), List.of(), plan.barriers());
    FloorPlan asked = plan.with(microphones);
    if (!asked.faults().isEmpty()) {
      throw new IllegalArgumentException("the floor has faults: " + asked.faults());
    }
    FloorField field = new FloorField(alone, 0);
    List<Line> lines = new ArrayList<>();
    for (FloorMicrophone microphone : microphones) {
      lines.add(line(microphone, source, BleedMatrix.row(field, microphone).get(0)));
    }
    lines.sort(Comparator.comparingDouble(line -> line.cell().arrivalMs()));
    Air air = plan.room().air();
    return new Alignment(
        air.speedOfSoundMPerS(),
        air.speedLaw(),
        lines.stream().map(line -> aligned(question, source, lines.get(0), line)).toList(),
        strategies(question, lines),
        air.validity());
  }

  private static Line line(FloorMicrophone microphone, FloorSource source, BleedCell cell) {
    boolean otherSide = microphone.sideOf(source) == SourceSide.OPPOSITE;
    return new Line(
        microphone,
        cell,
        new SignedArrival(
            cell.direct().louder(microphone.faderDb()).octavesDb(),
            cell.arrivalMs(),
            cell.inverted() != otherSide));
  }

  private static AlignedMicrophone aligned(
      AlignmentQuestion question, FloorSource source, Line first, Line line) {
    double samplesPerMs = question.sampleRateHz() / 1000;
    double arrivalMs = line.cell().arrivalMs();
    double afterMs = arrivalMs - first.cell().arrivalMs();
    Air air = question.plan().room().air();
    double shorterS =
        line.cell().pathM() / speedAt(air, question.coldestC())
            - line.cell().pathM() / speedAt(air, question.warmestC());
    return new AlignedMicrophone(
        line.microphone().id(),
        line.cell().pathM(),
        arrivalMs,
        arrivalMs * samplesPerMs,
        afterMs,
        afterMs * samplesPerMs,
        shorterS * question.sampleRateHz(),
        levelDb(line),
        PolarityAdvice.of(first.arrival(), line.arrival()),
        line == first
            ? new Comb(Double.POSITIVE_INFINITY, 0, false)
            : comb(first.arrival(), levelDb(first), line.arrival(), levelDb(line)),
        PutBack.of(
            line.microphone(),
            source,
            line.cell().pathM(),
            line.cell().microphoneAngleDeg(),
            air.speedOfSoundMPerS(),
            question.sampleRateHz()));
  }

  private static double speedAt(Air air, double temperatureC) {
    return new Air(temperatureC, air.relativeHumidityPercent(), air.pressureKpa())
        .speedOfSoundMPerS();
  }

  private static double levelDb(Line line) {
    return line.cell().direct().overallDb() + line.microphone().faderDb();
  }

  private static Comb comb(SignedArrival one, double oneDb, SignedArrival other, double otherDb) {
    return Comb.of(
        oneDb, otherDb, other.arrivalMs() - one.arrivalMs(), one.inverted() != other.inverted());
  }

  private static Map<DelayStrategy, List<DelayedMicrophone>> strategies(
      AlignmentQuestion question, List<Line> lines) {
    Map<DelayStrategy, List<DelayedMicrophone>> strategies = new LinkedHashMap<>();
    if (question.pairIds().isEmpty()) {
      return strategies;
    }
    List<Line> pair =
        lines.stream().filter(line -> question.pairIds().contains(line.microphone().id())).toList();
    double pairMs =
        pair.stream().mapToDouble(line -> line.cell().arrivalMs()).average().orElseThrow();
    for (DelayStrategy strategy : DelayStrategy.values()) {
      strategies.put(
          strategy,
          lines.stream().map(line -> delayed(question, strategy, line, pair, pairMs)).toList());
    }
    return strategies;
  }

  private static DelayedMicrophone delayed(
      AlignmentQuestion question,
      DelayStrategy strategy,
      Line line,
      List<Line> pair,
      double pairMs) {
    double delayMs =
        pair.contains(line)
            ? 0
            : strategy.delayMs(line.cell().arrivalMs(), pairMs, question.extraMs());
    SignedArrival then = line.arrival().delayed(delayMs);
    Line reference = pair.get(0);
    return new DelayedMicrophone(
        line.microphone().id(),
        delayMs,
        delayMs * question.sampleRateHz() / 1000,
        then.arrivalMs() - pairMs,
        line == reference
            ? Optional.empty()
            : Optional.of(comb(reference.arrival(), levelDb(reference), then, levelDb(line))),
        reference.arrival().lowSumDb(then));
  }
}
