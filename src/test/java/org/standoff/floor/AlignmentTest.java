package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.fixture.Floors;

class AlignmentTest {
  private static final Point3 SNARE = new Point3(5, 4, 0.8);

  @Test
  void microphonesComeInTheOrderOfArrivalWithTheirDrift() {
    Alignment alignment = align(List.of(above("far", 3.05), above("close", 0.05)), List.of());
    assertThat(alignment.microphones())
        .extracting(AlignedMicrophone::microphoneId)
        .containsExactly("close", "far");
    AlignedMicrophone far = alignment.microphones().get(1);
    assertThat(far.afterFirstMs()).isCloseTo(3000 / 343.2, within(1e-9));
    assertThat(far.afterFirstSamples()).isCloseTo(3 * 48_000 / 343.2, within(1e-6));
    assertThat(far.driftSamples() * 3 / 3.05).isCloseTo(6.6, within(0.05));
    assertThat(alignment.speedLaw()).isEqualTo("iso-9613-1");
    assertThat(alignment.strategies()).isEmpty();
  }

  @Test
  void theFarSideOfADrumIsInvertedByBothViews() {
    FloorMicrophone under =
        Floors.opposite(
            Floors.microphone("under", CARDIOID, new Point3(5, 4, 0.7), SNARE, "snare"));
    PolarityAdvice advice =
        align(List.of(above("close", 0.05), under), List.of()).microphones().get(1).polarity();
    assertThat(advice.invertBySide()).isTrue();
    assertThat(advice.invertBySum()).isTrue();
    assertThat(advice.agreed()).isTrue();
    assertThat(advice.sumInvertedDb()).isGreaterThan(advice.sumNormalDb() + 6);
  }

  @Test
  void halfAWaveOfPathMakesTheTwoViewsDiffer() {
    FloorSource low =
        Floors.source("snare", Floors.only(Octave.HZ_125, 100), SNARE, Directivity.OMNI);
    double halfWaveM = 343.2 / Octave.HZ_125.midHz() / 2;
    AlignedMicrophone far =
        align(low, List.of(above("close", 0.5), above("far", 0.5 + halfWaveM)), List.of(), 0)
            .microphones()
            .get(1);
    assertThat(far.polarity().invertBySide()).isFalse();
    assertThat(far.polarity().invertBySum()).isTrue();
    assertThat(far.polarity().agreed()).isFalse();
  }

  @Test
  void aRearLobeCountsLikeTheOtherSide() {
    FloorMicrophone backwards =
        Floors.microphone("eight", FIGURE_8, new Point3(5, 4, 1), new Point3(5, 4, 3), "snare");
    AlignedMicrophone heard =
        align(List.of(above("close", 0.05), backwards), List.of()).microphones().get(1);
    assertThat(heard.polarity().invertBySide()).isTrue();
    assertThat(heard.comb().inverted()).isTrue();
  }

  @Test
  void strategiesStandSideBySide() {
    List<FloorMicrophone> all =
        List.of(above("close", 0.05), above("left", 1.0), above("right", 1.1));
    Alignment alignment = align(all, List.of("left", "right"));
    assertThat(alignment.strategies().keySet()).containsExactly(DelayStrategy.values());
    DelayedMicrophone none = alignment.strategies().get(DelayStrategy.NONE).get(0);
    DelayedMicrophone to = alignment.strategies().get(DelayStrategy.TO_PAIR).get(0);
    DelayedMicrophone plus = alignment.strategies().get(DelayStrategy.TO_PAIR_PLUS).get(0);
    assertThat(none.delayMs()).isEqualTo(0);
    assertThat(none.afterPairMs()).isCloseTo(-1000 / 343.2, within(1e-9));
    assertThat(to.delayMs()).isCloseTo(1000 / 343.2, within(1e-9));
    assertThat(to.delaySamples()).isCloseTo(48_000 / 343.2, within(1e-6));
    assertThat(to.afterPairMs()).isCloseTo(0, within(1e-9));
    assertThat(plus.delayMs()).isCloseTo(1000 / 343.2 + 5, within(1e-9));
    assertThat(to.combWithPair().orElseThrow().delayMs()).isCloseTo(50 / 343.2, within(1e-9));
    assertThat(to.lowSumDb()).isGreaterThan(none.lowSumDb());
    for (List<DelayedMicrophone> delayed : alignment.strategies().values()) {
      assertThat(delayed.get(1).delayMs()).isEqualTo(0);
      assertThat(delayed.get(1).combWithPair()).isEmpty();
    }
  }

  @Test
  void whatIsNearMustBePutBackMoreExactly() {
    Alignment alignment = align(List.of(above("close", 0.05), above("far", 2)), List.of());
    PutBack close = alignment.microphones().get(0).putBack();
    PutBack far = alignment.microphones().get(1).putBack();
    double share = 1 - Math.pow(10, -1 / 20.0);
    assertThat(close.mmFor1Db().orElseThrow()).isCloseTo(50 * share, within(1e-6));
    assertThat(far.mmFor1Db().orElseThrow()).isCloseTo(2000 * share, within(1e-6));
    assertThat(close.mmForOneSample()).isCloseTo(7.15, within(0.005));
    assertThat(close.degFor1Db()).isEmpty();
  }

  @Test
  void aCardioidOnAxisMayTurnFortyDegreesForOneDecibelAndOffAxisFewer() {
    FloorMicrophone onAxis =
        Floors.microphone("on", CARDIOID, new Point3(5, 4, 1.3), SNARE, "snare");
    FloorMicrophone offAxis =
        Floors.microphone("off", CARDIOID, new Point3(5, 5, 0.8), new Point3(6, 5, 0.8), "snare");
    Alignment alignment = align(List.of(onAxis, offAxis), List.of());
    double share = Math.pow(10, -1 / 20.0);
    double on = Math.toDegrees(Math.acos(2 * share - 1));
    assertThat(alignment.microphones().get(0).putBack().degFor1Db().orElseThrow())
        .isCloseTo(on, within(1e-6));
    double off = Math.toDegrees(Math.acos(share - 1)) - 90;
    assertThat(alignment.microphones().get(1).putBack().degFor1Db().orElseThrow())
        .isCloseTo(off, within(1e-6));
  }

  @Test
  void insideAShellNoApproachMakesItLouder() {
    FloorSource shell =
        Floors.radiating(Floors.source("snare", 100, SNARE), new Radiator.Shell(0.28));
    assertThat(
            align(shell, List.of(above("close", 0.05)), List.of(), 0)
                .microphones()
                .get(0)
                .putBack()
                .mmFor1Db())
        .isEmpty();
  }

  @Test
  void overheadsAreEqualWhereTheirPathsAre() {
    Point3 left = new Point3(4.2, 4, 1.8);
    Point3 right = new Point3(6, 4.3, 1.9);
    OverheadPair pair = OverheadPair.about(SNARE, left, right, 343.2, 48_000);
    assertThat(SNARE.distanceToM(pair.leftEqual())).isCloseTo(pair.rightM(), within(1e-9));
    assertThat(SNARE.distanceToM(pair.rightEqual())).isCloseTo(pair.leftM(), within(1e-9));
    assertThat(SNARE.directionTo(pair.leftEqual()).angleBetweenDeg(SNARE.directionTo(left)))
        .isCloseTo(0, within(1e-6));
    assertThat(pair.leadMs()).isPositive();
    assertThat(pair.levelDifferenceDb()).isPositive();
    assertThat(pair.leadSamples()).isCloseTo(48 * pair.leadMs(), within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OverheadPair.about(SNARE, SNARE, right, 343.2, 48_000));
  }

  @Test
  void questionsThatCannotBeAnsweredAreRefused() {
    FloorPlan plan =
        Floors.plan(
            Floors.hall(70),
            List.of(Floors.source("snare", 100, SNARE)),
            List.of(above("close", 0.05)));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new AlignmentQuestion(plan, "snare", List.of(), List.of(), 48_000, 0, 12, 21));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new AlignmentQuestion(
                    plan, "snare", List.of("close"), List.of(), 48_000, 0, 21, 12));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Alignment.of(
                    new AlignmentQuestion(
                        plan, "gong", List.of("close"), List.of(), 48_000, 0, 12, 21)));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Alignment.of(
                    new AlignmentQuestion(
                        plan, "snare", List.of("far"), List.of(), 48_000, 0, 12, 21)));
  }

  private static Alignment align(List<FloorMicrophone> microphones, List<String> pair) {
    return align(Floors.source("snare", 100, SNARE).turned(Direction.FRONT), microphones, pair, 5);
  }

  private static Alignment align(
      FloorSource source, List<FloorMicrophone> microphones, List<String> pair, double extraMs) {
    FloorPlan plan = Floors.plan(Floors.hall(70), List.of(source), microphones);
    return Alignment.of(
        new AlignmentQuestion(
            plan,
            "snare",
            microphones.stream().map(FloorMicrophone::id).toList(),
            pair,
            48_000,
            extraMs,
            12,
            21));
  }

  private static FloorMicrophone above(String id, double byM) {
    return microphone(id, OMNI, byM);
  }

  private static FloorMicrophone microphone(String id, PatternName pattern, double byM) {
    return Floors.microphone(id, pattern, new Point3(5, 4, 0.8 + byM), SNARE, "snare");
  }
}
