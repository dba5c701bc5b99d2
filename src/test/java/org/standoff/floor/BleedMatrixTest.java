package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.HALF_OMNI;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Validity;
import org.standoff.fixture.Floors;

class BleedMatrixTest {
  private static final Point3 HERE = new Point3(5, 4, 1.5);
  private static final FloorSource NEAR = Floors.source("near", 90, new Point3(5, 5, 1.5));
  private static final FloorSource FAR = Floors.source("far", 96, new Point3(5, 1, 1.5));

  @Test
  void offendersAreRankedWithTheirDistanceRatioBesideTheTruth() {
    FloorSource farther = Floors.source("farther", 80, new Point3(9, 4, 1.5));
    MicrophoneBleed bleed = bleed(CARDIOID, List.of(NEAR, farther, FAR));
    assertThat(bleed.offenders()).extracting(Offender::sourceId).containsExactly("far", "farther");
    Offender far = bleed.offenders().get(0);
    assertThat(far.distanceRatio()).isCloseTo(3, within(1e-9));
    assertThat(far.ratioPromisesDb()).isCloseTo(9.54, within(0.01));
    assertThat(far.directDb()).isCloseTo(96 - 10.99 - 9.54 - 20, within(0.05));
    assertThat(far.belowWantedDb()).isCloseTo(bleed.wantedDirectDb() - far.totalDb(), within(1e-9));
    assertThat(far.direct()).isFalse();
    assertThat(bleed.roomDominates()).isTrue();
    assertThat(bleed.isolationDb().orElseThrow())
        .isCloseTo(bleed.wantedDirectDb() - bleed.unwantedDb(), within(1e-12));
    assertThat(bleed.wantedTotalDb()).isGreaterThan(bleed.wantedDirectDb());
  }

  @Test
  void aRoomMicrophoneHearsNothingUnwanted() {
    MicrophoneBleed bleed =
        BleedMatrix.of(
                Floors.plan(
                    Floors.hall(70),
                    List.of(NEAR, FAR),
                    List.of(Floors.microphone("room", OMNI, HERE, NEAR.position()))),
                1)
            .bleed(0);
    assertThat(bleed.isolationDb()).isEmpty();
    assertThat(bleed.offenders()).isEmpty();
    assertThat(bleed.unwantedDb()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(bleed.wantedTotalDb()).isGreaterThan(80);
  }

  @Test
  void theRearLobeOfAFigureEightTurnsPolarityOver() {
    BleedMatrix matrix = matrix(FIGURE_8, List.of(NEAR, FAR));
    assertThat(matrix.cell(0, 0).inverted()).isFalse();
    assertThat(matrix.cell(0, 1).inverted()).isTrue();
    assertThat(matrix.cell(0, 1).microphoneAngleDeg()).isCloseTo(180, within(1e-9));
    assertThat(matrix.cell(0, 1).arrivalMs()).isCloseTo(1000 * 3 / 343.2, within(1e-9));
  }

  @Test
  void rejectionEndsAtTheCapAsToldAndTheCapIsTheMicrophonesOwn() {
    double capped = matrix(CARDIOID, List.of(NEAR, FAR)).terms(0, 1).patternDb().get(Octave.HZ_1K);
    assertThat(capped).isCloseTo(-20, within(1e-9));
  }

  @Test
  void aPatternThatOpensInTheBassRejectsLessThere() {
    FloorPattern real =
        new FloorPattern(
            CARDIOID,
            CARDIOID.ideal(),
            Optional.of(Octaves.of(.8, .75, .7, .6, .5, .5, .5, .45, .4, .4)));
    FloorMicrophone microphone =
        Floors.microphone("mic", CARDIOID, HERE, NEAR.position(), "near").switchedTo(real);
    FloorSource wide =
        Floors.source("wide", Octaves.filled(90), new Point3(8, 4, 1.5), Directivity.OMNI);
    BleedMatrix matrix =
        BleedMatrix.of(Floors.plan(Floors.hall(70), List.of(NEAR, wide), List.of(microphone)), 1);
    Octaves pattern = matrix.terms(0, 1).patternDb();
    assertThat(pattern.get(Octave.HZ_31_5)).isCloseTo(Level.ofAmplitudeRatio(0.8), within(1e-9));
    assertThat(pattern.get(Octave.HZ_16K)).isCloseTo(Level.ofAmplitudeRatio(0.4), within(1e-9));
    double lateStep =
        matrix.cell(0, 1).late().db(Octave.HZ_31_5) - matrix.cell(0, 1).late().db(Octave.HZ_1K);
    assertThat(lateStep)
        .isCloseTo(Level.ofPowerRatio((0.64 + 0.04 / 3) / (0.25 + 0.25 / 3)), within(1e-9));
  }

  @Test
  void aBoundaryMicrophoneHearsNoImageFromBehind() {
    Point3 floor = new Point3(5, 4, 0);
    FloorMicrophone boundary =
        Floors.microphone("mic", HALF_OMNI, floor, new Point3(5, 4, 2), "near");
    FloorMicrophone omni = Floors.microphone("mic", OMNI, floor, new Point3(5, 4, 2), "near");
    BleedCell half = cell(boundary);
    BleedCell whole = cell(omni);
    assertThat(half.direct().overallDb()).isEqualTo(whole.direct().overallDb());
    assertThat(half.reflections().overallDb()).isLessThan(whole.reflections().overallDb());
    assertThat(half.late().overallDb()).isCloseTo(whole.late().overallDb() - 3.01, within(0.01));
  }

  @Test
  void theFirstReflectionsAreThoseOfSixWalls() {
    double expected = 0;
    double[][] mirrors = {
      {-5, 5, 1.5}, {23, 5, 1.5}, {5, -5, 1.5}, {5, 13, 1.5}, {5, 5, -1.5}, {5, 5, 8.9}
    };
    for (double[] at : mirrors) {
      double metres = HERE.distanceToM(new Point3(at[0], at[1], at[2]));
      double airDb = Floors.hall(70).air().attenuationDbPerM(Octave.HZ_500.midHz()) * metres;
      expected += Level.powerRatio(90 - airDb) * (1 - 70.0 / 474) / (4 * Math.PI * metres * metres);
    }
    BleedCell cell = cell(Floors.microphone("mic", OMNI, HERE, NEAR.position(), "near"));
    assertThat(cell.reflections().overallDb())
        .isCloseTo(Level.ofPowerRatio(expected), within(1e-9));
  }

  @Test
  void sourcesInTheMixAreCountedAtTheFaders() {
    FloorMicrophone own = Floors.microphone("own", CARDIOID, HERE, NEAR.position(), "near");
    FloorMicrophone other =
        Floors.fader(
            Floors.microphone("other", CARDIOID, new Point3(5, 2, 1.5), FAR.position(), "far"),
            -10);
    BleedMatrix matrix =
        BleedMatrix.of(Floors.plan(Floors.hall(70), List.of(NEAR, FAR), List.of(own, other)), 1);
    SourceInMix near = matrix.mix().get(0);
    assertThat(near.ownDb()).isCloseTo(matrix.cell(0, 0).total().overallDb(), within(1e-9));
    assertThat(near.bleedDb()).isCloseTo(matrix.cell(1, 0).total().overallDb() - 10, within(1e-9));
  }

  @Test
  void twoMicrophonesOfOneSourceCombAtTheirFaders() {
    FloorMicrophone close = Floors.microphone("close", OMNI, HERE, NEAR.position(), "near");
    FloorMicrophone late =
        Floors.fader(
            Floors.microphone("late", OMNI, new Point3(5, 3, 1.5), NEAR.position(), "near"), 6.02);
    SharedSource shared =
        BleedMatrix.of(Floors.plan(Floors.hall(70), List.of(NEAR), List.of(close, late)), 0)
            .sharedSources()
            .get(0);
    assertThat(shared.oneId()).isEqualTo("close");
    assertThat(shared.otherId()).isEqualTo("late");
    assertThat(shared.comb().levelDifferenceDb()).isCloseTo(0, within(0.01));
    assertThat(shared.comb().firstNotchHz()).isCloseTo(343.2 / 2, within(1e-6));
    assertThat(shared.comb().rippleDb()).isGreaterThan(50);
    assertThat(shared.comb().inverted()).isFalse();
  }

  @Test
  void aSourceHiddenFromBothHasNoComb() {
    FloorSource silent = Floors.source("near", Double.NEGATIVE_INFINITY, NEAR.position());
    FloorMicrophone one = Floors.microphone("one", OMNI, HERE, NEAR.position(), "near");
    FloorMicrophone other =
        Floors.microphone("other", OMNI, new Point3(5, 3, 1.5), NEAR.position(), "near");
    BleedMatrix matrix =
        BleedMatrix.of(Floors.plan(Floors.hall(70), List.of(silent), List.of(one, other)), 1);
    assertThat(matrix.sharedSources()).isEmpty();
    assertThat(matrix.cell(0, 0).total().overallDb()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void doubtsAreTold() {
    FloorPlan plan =
        new FloorPlan(
            Floors.hall(70),
            true,
            List.of(NEAR),
            List.of(
                Floors.microphone(
                    "mic",
                    CARDIOID,
                    NEAR.position().moved(Direction.FRONT, 0.05),
                    NEAR.position(),
                    "near")),
            List.of());
    assertThat(BleedMatrix.of(plan, 1).validity())
        .extracting(Validity::code)
        .contains("equivalent-box", "below-schroeder", "proximity-not-counted");
  }

  private static BleedCell cell(FloorMicrophone microphone) {
    return BleedMatrix.of(Floors.plan(Floors.hall(70), List.of(NEAR), List.of(microphone)), 1)
        .cell(0, 0);
  }

  private static MicrophoneBleed bleed(PatternName pattern, List<FloorSource> sources) {
    return matrix(pattern, sources).bleed(0);
  }

  private static BleedMatrix matrix(PatternName pattern, List<FloorSource> sources) {
    return BleedMatrix.of(
        Floors.plan(
            Floors.hall(70),
            sources,
            List.of(Floors.microphone("mic", pattern, HERE, NEAR.position(), "near"))),
        1);
  }
}
