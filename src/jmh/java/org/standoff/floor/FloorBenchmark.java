package org.standoff.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.fixture.Floors;

/**
 * Goals: a matrix cell of ten octaves and six first images within 3 µs, 8 µs behind two barriers;
 * 64 × 64 within 20 ms; the aim of 24 microphones among 30 sources within 1 s. A matrix of n × n is
 * told as a whole: over n² it is the cost of a cell.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FloorBenchmark {
  /**
   * Lower than any microphone here, so that it may stand anywhere; it costs what a high one does.
   */
  private static final Barrier SCREEN =
      new Barrier("screen", "low screen", 2.4, 0.4, 0.1, Octaves.filled(20), Octaves.filled(0.5));

  /** Matrices of growing size. */
  @State(Scope.Benchmark)
  public static class Sizes {
    @Param({"8", "32", "64", "128", "512"})
    public int side;

    private FloorPlan open = floor(1, 1);
    private FloorPlan screened = open;

    @Setup
    public void furnish() {
      open = floor(side, side);
      screened =
          open.plus(new PlacedBarrier(SCREEN, 5, 4, 60)).plus(new PlacedBarrier(SCREEN, 9, 5, -20));
    }
  }

  private final FloorPlan session = floor(24, 30);

  @Benchmark
  public BleedMatrix matrix(Sizes sizes) {
    return BleedMatrix.of(sizes.open, 1);
  }

  @Benchmark
  public BleedMatrix matrixBehindTwoBarriers(Sizes sizes) {
    return BleedMatrix.of(sizes.screened, 1);
  }

  @Benchmark
  public AimPlan aimOf24MicrophonesAmong30Sources() {
    Map<String, AimLimits> limits = new LinkedHashMap<>();
    for (FloorMicrophone microphone : session.microphones()) {
      limits.put(microphone.id(), AimLimits.anyDirection(AimLimits.USUAL_WANTED_LOSS_DB));
    }
    return new AimSearch(session, 1).best(limits, List.of());
  }

  private static FloorPlan floor(int microphones, int sources) {
    Random random = new Random(7);
    List<FloorSource> playing = new ArrayList<>();
    Directivity beamed = new Directivity(0, 1, 3, 5);
    for (int i = 0; i < sources; i++) {
      FloorSource source =
          Floors.source(
                  "s" + i, Octaves.filled(80 + 10 * random.nextDouble()), place(random), beamed)
              .turned(new Direction(360 * random.nextDouble(), 0));
      playing.add(
          switch (i % 3) {
            case 0 -> source;
            case 1 -> Floors.radiating(source, new Radiator.Piston(0.15));
            default -> Floors.radiating(source, new Radiator.IncoherentDisc(0.4));
          });
    }
    List<FloorMicrophone> standing = new ArrayList<>();
    for (int i = 0; i < microphones; i++) {
      FloorSource wanted = playing.get(i % sources);
      Point3 near = wanted.position().moved(new Direction(360 * random.nextDouble(), 20), 0.4);
      standing.add(
          Floors.microphone("m" + i, PatternName.CARDIOID, near, wanted.position(), wanted.id()));
    }
    return Floors.plan(Floors.hall(70), playing, standing);
  }

  private static Point3 place(Random random) {
    return new Point3(
        1 + 12 * random.nextDouble(), 1 + 7 * random.nextDouble(), 0.5 + 1.5 * random.nextDouble());
  }
}
