package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.standoff.acoustics.Air;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.fixture.Pairs;
import org.standoff.fixture.ShippedPairs;
import org.standoff.pairs.DiffuseCorrelation;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.RecordingAngle;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.Images;
import org.standoff.pairs.listening.ListeningModel;

/**
 * Goals: geometry of 12 players within 1 ms, a fit over all layouts and 60 microphones in 50 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PairBenchmark {
  private final List<ListeningModel> models = ShippedPairs.models();
  private final List<PicturedPlayer> twelve = PicturedPlayer.line(4, 12);
  private final PairHearing hearing = Pairs.heard(PatternName.CARDIOID, 0.17, 110);
  private final FitQuestion question =
      new FitQuestion(
          PicturedPlayer.line(3, 3),
          List.of(),
          new Stand(new Point3(0, 0, 0), 0, new ParameterRange(1, 2.5, 5), 2, 0),
          3,
          ShippedPairs.layouts(),
          sixty(),
          Wish.fill(80),
          models,
          Optional.empty(),
          Air.STANDARD);

  @Benchmark
  public void geometryOfTwelvePlayers(Blackhole sink) {
    for (PicturedPlayer player : twelve) {
      SoundOrigin origin = new SoundOrigin.InRoom(new Point3(player.position().xM(), 2.5, 0));
      StereoDifferences heard = hearing.differences(origin);
      sink.consume(Images.of(models, heard.levelDb(), heard.timeMs()));
      sink.consume(MonoSum.of(hearing, origin));
    }
    for (ListeningModel model : models) {
      sink.consume(RecordingAngle.at(hearing, model, 2.5));
    }
    sink.consume(DiffuseCorrelation.of(hearing).perOctave());
    sink.consume(MonoSum.around(hearing, 2.5, 5));
  }

  @Benchmark
  public FitAnswer fitOverAllLayoutsAndSixtyMicrophones() {
    return PairFit.answer(question);
  }

  /** Sixty models with a coefficient of their own each: the worst case for sharing work. */
  private static List<AtHand> sixty() {
    List<AtHand> all = new ArrayList<>();
    PatternName[] names = PatternName.values();
    for (int at = 0; at < 60; at++) {
      PatternName name = names[at % names.length];
      double omniPart = Math.min(name.ideal().omniPart() + 0.003 * (at / names.length), 1);
      all.add(
          new AtHand(
              "model-" + at,
              List.of(new PatternChoice(name, Polar.firstOrder(omniPart))),
              false,
              3,
              true,
              Polar.DEFAULT_REJECTION_CAP_DB));
    }
    return all;
  }
}
