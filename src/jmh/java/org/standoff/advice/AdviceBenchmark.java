package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.SpectrumClass;
import org.standoff.chain.Microphone;
import org.standoff.chain.Settings;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PlacementBuilder;
import org.standoff.fixture.PreampBuilder;
import org.standoff.fixture.QuestionBuilder;

/** What advice costs: one candidate, one microphone with every explanation, a large catalogue. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 2)
public class AdviceBenchmark {
  private static final int LARGE = 10_000;

  private final Question question = question();
  private final Microphone microphone =
      MicrophoneBuilder.aMultiPattern().called("bench/one").build();
  private final List<Microphone> large = large();

  private final Adviser adviser = new Adviser(question);
  private final Assessor assessor = adviser.assessor();
  private final Assessment chosen = SettingsChoice.choose(assessor, microphone);
  private final PatternView view = chosen.view();
  private final Settings settings = chosen.settings();

  /** One candidate: these settings of a pattern that is already looked at. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MICROSECONDS)
  public Assessment oneCandidate() {
    return assessor.assess(microphone, view, settings);
  }

  /** One candidate with its pattern looked at anew: rise per octave, isolation. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MICROSECONDS)
  public Assessment oneCandidateAndItsPattern() {
    return assessor.assess(
        microphone, assessor.view(microphone, "main", settings.pattern()), settings);
  }

  /** One microphone, asked from nothing, with reasons, changes, limits, cures, risk, cautions. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MICROSECONDS)
  public void oneAdviceExplained(Blackhole told) {
    Adviser asked = new Adviser(question);
    Assessment best = asked.advise(List.of(microphone)).ranked().get(0).assessment();
    Limits limits = Limits.of(asked.assessor(), best);
    Arrival arrival = asked.assessor().arrivals().get(0);
    told.consume(asked.weighed(best));
    told.consume(Reasons.of(question, best));
    told.consume(Changes.of(asked.assessor(), best));
    told.consume(limits);
    told.consume(Cures.of(asked.assessor(), best, limits));
    told.consume(ClipRisk.probability(arrival.peak(), best.levels().typical(), 3));
    told.consume(Cautions.ofPlace(question, arrival));
    told.consume(Cautions.ofMicrophone(question, microphone));
  }

  /** Ten thousand microphones of one to three patterns ranked for one source. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Advice rankingTenThousand() {
    return adviser.advise(large);
  }

  private static Question question() {
    Placement placement =
        PlacementBuilder.aPlacement()
            .radiating(new Radiator.Piston(0.178))
            .peak(0.05, 141, 6, 118)
            .spectrum(SpectrumClass.SNARE_DRUM, 180, 12_000)
            .wantedFrom(180)
            .build();
    return QuestionBuilder.aQuestion(placement)
        .at(0.05)
        .into(PreampBuilder.aPreamp().phantomBanksOf(4).build())
        .build();
  }

  private static List<Microphone> large() {
    Random random = new Random(1);
    PatternName[] names = PatternName.values();
    List<Microphone> microphones = new ArrayList<>(LARGE);
    for (int i = 0; i < LARGE; i++) {
      MicrophoneBuilder builder =
          MicrophoneBuilder.aMicrophone()
              .called("bench/m-" + i)
              .bears(130 + random.nextInt(200) / 10.0, i % 4 == 0 ? 3 : 0)
              .highPass(40 + random.nextInt(60), 1 + random.nextInt(3));
      for (int pattern = 0; pattern <= i % 3; pattern++) {
        builder.pattern(names[(i + pattern) % names.length], 1 + random.nextInt(300) / 10.0, 12);
      }
      for (int pad = 1; pad <= i % 3; pad++) {
        builder.padBefore(10 * pad);
      }
      microphones.add(builder.build());
    }
    return microphones;
  }
}
