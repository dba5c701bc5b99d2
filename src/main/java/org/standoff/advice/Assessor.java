package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.standoff.acoustics.PeakSpl;
import org.standoff.chain.Filter;
import org.standoff.chain.Gain;
import org.standoff.chain.GainRule;
import org.standoff.chain.Headrooms;
import org.standoff.chain.LineNoise;
import org.standoff.chain.Microphone;
import org.standoff.chain.MicrophoneOutput;
import org.standoff.chain.NoiseBudget;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.Reading;
import org.standoff.chain.Settings;
import org.standoff.chain.SignalChain;

/**
 * Assesses candidates for one question. What arrives at the capsules is found once; a candidate
 * then costs little more than its filter and its logarithms.
 */
public final class Assessor {
  private final Question question;
  private final List<Arrival> arrivals;

  public Assessor(Question question) {
    this.question = question;
    List<Arrival> found = new ArrayList<>(question.positions().size());
    for (Position position : question.positions()) {
      found.add(Arrival.of(question.placement(), question.level(), position));
    }
    this.arrivals = List.copyOf(found);
  }

  private Assessor(Question question, List<Arrival> arrivals) {
    this.question = question;
    this.arrivals = List.copyOf(arrivals);
  }

  /** The same question with each microphone at another distance, its angles unchanged, in m. */
  Assessor at(DoubleUnaryOperator distanceM) {
    List<Arrival> moved = new ArrayList<>(arrivals.size());
    List<Position> positions = new ArrayList<>(arrivals.size());
    for (Arrival arrival : arrivals) {
      double otherM = distanceM.applyAsDouble(arrival.position().distanceM());
      Arrival there = arrival.at(question.placement(), question.level(), otherM);
      moved.add(there);
      positions.add(there.position());
    }
    return new Assessor(question.at(positions), moved);
  }

  /** The question. */
  public Question question() {
    return question;
  }

  /** What arrives, position by position. */
  public List<Arrival> arrivals() {
    return arrivals;
  }

  /** All patterns of a microphone, output by output, at the place of the question. */
  public List<PatternView> views(Microphone microphone) {
    List<PatternView> views = new ArrayList<>();
    for (MicrophoneOutput output : microphone.outputs()) {
      for (PatternFigures pattern : output.patterns()) {
        views.add(view(microphone, output.id(), pattern));
      }
    }
    return views;
  }

  /** One pattern of a microphone at the place of the question. */
  public PatternView view(Microphone microphone, String outputId, PatternFigures pattern) {
    return PatternView.of(question, arrivals, microphone, outputId, pattern);
  }

  /** The pattern that was assessed, looked at again from this assessor's place. */
  PatternView viewOf(Assessment assessment) {
    return view(assessment.microphone(), assessment.view().outputId(), assessment.view().pattern());
  }

  /** Peaks and headrooms of settings, the gain found by the style. */
  public Levels levels(Microphone microphone, PatternView view, Settings settings) {
    return levels(microphone, view, settings, OptionalDouble.empty());
  }

  /**
   * Peaks and headrooms of settings.
   *
   * @param givenGainDb a told gain, in dB; absent to find it by the style
   */
  public Levels levels(
      Microphone microphone, PatternView view, Settings settings, OptionalDouble givenGainDb) {
    SignalChain chain = new SignalChain(microphone, question.preamp());
    double sheetSpreadDb = microphone.maximumSpl().spreadDb();
    List<Reading> readings = new ArrayList<>(arrivals.size());
    Optional<GainRule> oneGain = Optional.empty();
    if (givenGainDb.isPresent()) {
      oneGain = Optional.of(GainRule.given(givenGainDb.getAsDouble()));
    } else if (arrivals.size() > 1) {
      oneGain = Optional.of(GainRule.fixed(leastGain(chain, view, settings)));
    }
    Headrooms typical = null;
    Headrooms guarded = null;
    for (int i = 0; i < arrivals.size(); i++) {
      Arrival arrival = arrivals.get(i);
      Guard guard = guard(arrival, sheetSpreadDb);
      Reading reading = read(chain, view, settings, i, oneGain.orElseGet(() -> rule(guard)));
      readings.add(reading);
      Headrooms here = guard.guarded(reading.headrooms());
      typical = typical == null ? reading.headrooms() : typical.least(reading.headrooms());
      guarded = guarded == null ? here : guarded.least(here);
    }
    return new Levels(
        List.copyOf(readings), Objects.requireNonNull(typical), Objects.requireNonNull(guarded));
  }

  /** One candidate with everything, the gain found by the style. */
  public Assessment assess(Microphone microphone, PatternView view, Settings settings) {
    return assess(microphone, view, settings, OptionalDouble.empty());
  }

  /** One candidate with everything; see {@link #levels} for the gain. */
  public Assessment assess(
      Microphone microphone, PatternView view, Settings settings, OptionalDouble givenGainDb) {
    Levels levels = levels(microphone, view, settings, givenGainDb);
    Gain gain = levels.loudest().gain();
    NoiseBudget noise =
        LineNoise.of(
            new SignalChain(microphone, question.preamp()),
            settings,
            gain.setDb(),
            question.surroundings().backgroundDba());
    return new Assessment(
        microphone,
        view,
        settings,
        levels,
        noise,
        arrivals.get(0).longTermDba() - view.aimLossDb() - noise.totalDba(),
        filterLossDb(settings.filter(), question.wantedFromHz()));
  }

  /** What a filter alone costs at a frequency, in dB, ≥ 0. */
  static double filterLossDb(Optional<Filter> filter, double hz) {
    return filter.isPresent() ? -filter.get().highPass().gainDb(hz) : 0;
  }

  /** Guard of one arrival for a microphone whose limit has a spread, in dB. */
  Guard guard(Arrival arrival, double sheetSpreadDb) {
    return Guard.of(arrival.peak(), sheetSpreadDb, question.style().guardedPercentile());
  }

  /** The gain of a pair: that of the louder microphone, with what was wanted of it. */
  private Gain leastGain(SignalChain chain, PatternView view, Settings settings) {
    Gain least = null;
    for (int i = 0; i < arrivals.size(); i++) {
      Gain own = read(chain, view, settings, i, rule(guard(arrivals.get(i), 0))).gain();
      if (least == null || own.wantedDb() < least.wantedDb()) {
        least = own;
      }
    }
    return Objects.requireNonNull(least);
  }

  private Reading read(
      SignalChain chain, PatternView view, Settings settings, int position, GainRule rule) {
    return chain.read(
        settings,
        new PeakSpl(arrivals.get(position).peak().typicalDb()),
        view.rises().get(position),
        rule);
  }

  private GainRule rule(Guard guard) {
    return new GainRule(
        Optional.empty(),
        question.style().targetPeakDbfs(),
        guard.everyStageDb(),
        question.style().wantedHeadroomDb());
  }
}
