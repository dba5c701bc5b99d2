package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.acoustics.PatternName.SUPERCARDIOID;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.Floors;

class AimSearchTest {
  private static final PatternName[] DIRECTIONAL = {
    CARDIOID, SUPERCARDIOID, HYPERCARDIOID, FIGURE_8
  };
  private static final Point3 HERE = new Point3(5, 4, 1.5);
  private static final Barrier GOBO =
      new Barrier("gobo", "gobo", 2.4, 2.0, 0.1, Octaves.filled(25), Octaves.filled(0.6));

  /** The sweep is computed by the bleed matrix, not by what the search uses. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void neverWorseThanASweepInStepsOfOneDegreeNorThanToday(int seed) {
    Random random = new Random(seed);
    FloorPlan plan = floor(random, 3 + random.nextInt(4));
    FloorMicrophone microphone = plan.microphones().get(0);
    double lossDb = random.nextInt(3);
    AimAdvice advice = new AimSearch(plan, 1).best(microphone.id(), AimLimits.anyDirection(lossDb));
    assertThat(advice.gainDb()).isGreaterThanOrEqualTo(0);
    assertThat(advice.best().wantedDb())
        .isGreaterThanOrEqualTo(advice.today().wantedDb() - lossDb - 1e-6);
    assertThat(advice.best().unwantedDb())
        .isLessThanOrEqualTo(sweepDb(plan, microphone, lossDb) + 0.1);
    MicrophoneBleed best =
        BleedMatrix.of(plan.with(List.of(microphone.aimed(advice.best().aim()))), 1).bleed(0);
    assertThat(best.unwantedDb()).isCloseTo(advice.best().unwantedDb(), within(1e-9));
    assertThat(best.wantedDirectDb()).isCloseTo(advice.best().wantedDb(), within(1e-9));
    assertThat(best.unwantedRoomDb()).isCloseTo(advice.best().unwantedRoomDb(), within(1e-9));
  }

  @Test
  void theNullOfACardioidTurnsToTheOnlyNeighbour() {
    FloorPlan plan =
        open(
            Floors.microphone("mic", CARDIOID, HERE, new Point3(5, 5, 1.5), "wanted"),
            Floors.source("loud", 100, new Point3(8, 4, 1.5)));
    AimAdvice advice = new AimSearch(plan, 0).best("mic", AimLimits.anyDirection(6.5));
    Direction toNeighbour = HERE.directionTo(new Point3(8, 4, 1.5));
    assertThat(advice.best().aim().angleBetweenDeg(toNeighbour)).isGreaterThan(130);
    assertThat(advice.gainDb()).isGreaterThan(13);
    assertThat(advice.pointless()).isFalse();
  }

  @Test
  void limitsAreKept() {
    AimLimits narrow = new AimLimits(-10, 25, -5, 15, 0, List.of(), 3, Map.of());
    AimAdvice advice =
        new AimSearch(
                open(
                    Floors.microphone("mic", SUPERCARDIOID, HERE, new Point3(5, 5, 1.5), "wanted"),
                    Floors.source("loud", 100, new Point3(8, 4, 1.5))),
                0)
            .best("mic", narrow);
    assertThat(advice.best().aim().elevationDeg()).isBetween(-5.0, 15.0);
    assertThat(advice.best().aim().azimuthDeg()).isBetween(15.0, 25.0);
    assertThat(advice.gainDb()).isGreaterThan(1);
  }

  @Test
  void anotherPatternIsTakenWhereItIsBetterAndTheSecondBasinIsTold() {
    FloorMicrophone omni = Floors.microphone("mic", OMNI, HERE, new Point3(5, 5, 1.5), "wanted");
    AimLimits limits =
        new AimLimits(
            -180,
            180,
            -90,
            90,
            0,
            List.of(FloorPattern.ideal(CARDIOID), FloorPattern.ideal(FIGURE_8)),
            1,
            Map.of());
    AimAdvice advice =
        new AimSearch(open(omni, Floors.source("loud", 100, new Point3(8, 4, 1.5))), 0)
            .best("mic", limits);
    assertThat(advice.best().pattern().name()).isEqualTo(FIGURE_8);
    assertThat(advice.gainDb()).isCloseTo(20, within(0.01));
    AimSetting second = advice.second().orElseThrow();
    assertThat(
            second.pattern().name() != FIGURE_8
                || second.aim().angleBetweenDeg(advice.best().aim()) >= 20)
        .isTrue();
  }

  @Test
  void aSourceThatCountsMoreGetsTheNull() {
    FloorSource east = Floors.source("east", 100, new Point3(8, 4, 1.5));
    FloorSource west = Floors.source("west", 100, new Point3(2, 4, 1.5));
    FloorPlan plan =
        open(
            Floors.microphone("mic", HYPERCARDIOID, HERE, new Point3(5, 5, 1.5), "wanted"),
            east,
            west);
    AimLimits heavy = new AimLimits(-180, 180, -90, 90, 0, List.of(), 2, Map.of("east", 20.0));
    Direction aim = new AimSearch(plan, 0).best("mic", heavy).best().aim();
    double toEast = Math.abs(aim.angleBetweenDeg(HERE.directionTo(east.position())) - 109.5);
    double toWest = Math.abs(aim.angleBetweenDeg(HERE.directionTo(west.position())) - 109.5);
    assertThat(toEast).isLessThan(toWest);
  }

  @Test
  void whereTheRoomCarriesItAimingIsPointless() {
    FloorPlan plan =
        Floors.plan(
            Floors.hall(40),
            List.of(
                Floors.source("wanted", 90, new Point3(12, 8, 1.5)),
                Floors.source("drums", 110, new Point3(1, 1, 1))),
            List.of(
                Floors.microphone(
                    "mic", CARDIOID, new Point3(12, 7, 1.5), new Point3(12, 8, 1.5), "wanted")));
    AimAdvice advice = new AimSearch(plan, 0).best("mic", AimLimits.anyDirection(1));
    assertThat(advice.pointless()).isTrue();
    assertThat(advice.gainDb()).isLessThan(1);
  }

  @Test
  void movingWithinReachNeverLosesAndNeverLeavesIt() {
    FloorPlan plan = floor(new Random(9), 3);
    FloorMicrophone microphone = plan.microphones().get(0);
    AimLimits still = AimLimits.anyDirection(1);
    AimLimits reaching = new AimLimits(-180, 180, -90, 90, 0.3, List.of(), 1, Map.of());
    AimAdvice turned = new AimSearch(plan, 1).best(microphone.id(), still);
    AimAdvice moved = new AimSearch(plan, 1).best(microphone.id(), reaching);
    assertThat(moved.best().position().distanceToM(microphone.position()))
        .isLessThanOrEqualTo(0.3 + 1e-9);
    assertThat(moved.gainDb()).isGreaterThan(turned.gainDb() + 0.5);
    assertThat(moved.best().wantedAtEqualGainDb())
        .isGreaterThanOrEqualTo(moved.today().wantedDb() - 1 - 1e-6);
  }

  @Test
  void theBestOfTheBarrierPlacesIsTakenAndOneThatDoesHarmIsNot() {
    FloorPlan plan =
        open(
            Floors.microphone("mic", OMNI, HERE, new Point3(5, 5, 1.5), "wanted"),
            Floors.source("loud", 100, new Point3(8, 4, 1.0)));
    PlacedBarrier between = new PlacedBarrier(GOBO, 6, 4, 90);
    PlacedBarrier behind = new PlacedBarrier(GOBO, 3, 4, 90);
    AimPlan chosen =
        new AimSearch(plan, 0)
            .best(Map.of("mic", AimLimits.anyDirection(0)), List.of(behind, between));
    assertThat(chosen.barrier()).contains(between);
    assertThat(chosen.advice().get(0).gainDb()).isGreaterThan(5);
    AimPlan none =
        new AimSearch(plan, 0).best(Map.of("mic", AimLimits.anyDirection(0)), List.of(behind));
    assertThat(none.barrier()).isEmpty();
  }

  @Test
  void anglesLeaveTheirLimitsOnTheShorterWayRound() {
    AimLimits behind = new AimLimits(170, 190, -10, 10, 0, List.of(), 1, Map.of());
    assertThat(behind.outsideDeg(-175, 0)).isEqualTo(0);
    assertThat(behind.outsideDeg(180, 12)).isEqualTo(2);
    assertThat(behind.outsideDeg(160, 0)).isCloseTo(10, within(1e-9));
    assertThat(behind.outsideDeg(-165, 0)).isCloseTo(5, within(1e-9));
    assertThat(AimLimits.anyDirection(1).outsideDeg(123, 45)).isEqualTo(0);
  }

  @Test
  void aSilentWantedSourceLeavesTheAimFree() {
    FloorMicrophone mic = Floors.microphone("mic", CARDIOID, HERE, new Point3(5, 5, 1.5), "wanted");
    FloorPlan plan =
        Floors.plan(
            Floors.openAir(),
            List.of(
                Floors.source("wanted", Double.NEGATIVE_INFINITY, new Point3(5, 5, 1.5)),
                Floors.source("loud", 100, new Point3(8, 4, 1.5))),
            List.of(mic));
    AimAdvice advice = new AimSearch(plan, 0).best("mic", AimLimits.anyDirection(0));
    assertThat(advice.gainDb()).isCloseTo(14, within(0.1));
  }

  @Test
  void whatCannotBeSearchedIsRefused() {
    FloorPlan plan =
        open(
            Floors.microphone("room", OMNI, HERE, new Point3(5, 5, 1.5)),
            Floors.source("loud", 100, new Point3(8, 4, 1.5)));
    AimSearch search = new AimSearch(plan, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> search.best("room", AimLimits.anyDirection(1)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> search.best("nobody", AimLimits.anyDirection(1)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new AimLimits(10, -10, 0, 0, 0, List.of(), 1, Map.of()));
  }

  private static FloorPlan open(FloorMicrophone microphone, FloorSource... unwanted) {
    List<FloorSource> sources = new ArrayList<>(List.of(unwanted));
    sources.add(Floors.source("wanted", 90, new Point3(5, 5, 1.5)));
    return Floors.plan(Floors.openAir(), sources, List.of(microphone));
  }

  private static FloorPlan floor(Random random, int neighbours) {
    List<FloorSource> sources = new ArrayList<>();
    sources.add(Floors.source("wanted", 90, anywhere(random)));
    Point3 mic =
        sources
            .get(0)
            .position()
            .moved(new Direction(360 * random.nextDouble(), 40 * random.nextDouble()), 0.4);
    for (int i = 0; i < neighbours; i++) {
      sources.add(Floors.source("n" + i, 85 + 15 * random.nextDouble(), anywhere(random)));
    }
    PatternName pattern = DIRECTIONAL[random.nextInt(DIRECTIONAL.length)];
    Point3 aimedAt =
        sources.get(0).position().moved(new Direction(360 * random.nextDouble(), 0), 0.1);
    return Floors.plan(
        Floors.hall(150 + 200 * random.nextDouble()),
        sources,
        List.of(Floors.microphone("mic", pattern, mic, aimedAt, "wanted")));
  }

  private static Point3 anywhere(Random random) {
    return new Point3(
        2 + 10 * random.nextDouble(), 2 + 5 * random.nextDouble(), 0.8 + 1.2 * random.nextDouble());
  }

  private static double sweepDb(FloorPlan plan, FloorMicrophone microphone, double lossDb) {
    FloorField field = new FloorField(plan, 1);
    double leastWantedDb = wantedDb(field, microphone) - lossDb;
    double best = Double.POSITIVE_INFINITY;
    for (int azimuth = -180; azimuth < 180; azimuth++) {
      for (int elevation = -90; elevation <= 90; elevation++) {
        FloorMicrophone aimed = microphone.aimed(new Direction(azimuth, elevation));
        if (wantedDb(field, aimed) >= leastWantedDb) {
          best =
              Math.min(
                  best,
                  MicrophoneBleed.of(plan, aimed, BleedMatrix.row(field, aimed)).unwantedDb());
        }
      }
    }
    return best;
  }

  private static double wantedDb(FloorField field, FloorMicrophone aimed) {
    return field.cell(aimed, BleedMatrix.ear(aimed), 0).direct().overallDb();
  }
}
