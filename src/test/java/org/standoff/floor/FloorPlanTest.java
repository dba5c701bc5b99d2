package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.Spectrum;
import org.standoff.acoustics.SpectrumClass;
import org.standoff.fixture.Floors;

class FloorPlanTest {
  private static final Point3 HERE = new Point3(5, 4, 1.5);
  private static final FloorSource HARP = Floors.source("harp", 90, new Point3(7, 4, 1));
  private static final Barrier GOBO =
      new Barrier("gobo", "gobo", 2.4, 1.8, 0.1, Octaves.filled(20), Octaves.filled(0.5));

  @Test
  void aSoundPlanHasNoFault() {
    assertThat(plan(at(HERE)).faults()).isEmpty();
  }

  @Test
  void whatIsOutsideTheRoomIsToldWithItsPlace() {
    FloorFault fault = onlyFault(plan(at(new Point3(14.2, 4, 1.5))));
    assertThat(fault.code()).isEqualTo("outside-room");
    assertThat(fault.subject()).isEqualTo("mic");
    assertThat(fault.detail()).contains("14.20", "14.00");
    assertThat(plan(at(HERE).at(new Point3(5, 4, Double.NaN))).faults())
        .extracting(FloorFault::code)
        .contains("outside-room", "microphone-inside-source");
  }

  @Test
  void aMicrophoneInsideABodyIsRefused() {
    FloorSource bodied =
        Floors.radiating(HARP, new Radiator.Sphere(0.3)).turned(new Direction(0, 0));
    FloorPlan inside =
        Floors.plan(Floors.hall(70), List.of(bodied), List.of(at(new Point3(7, 3.7, 1))));
    assertThat(onlyFault(inside).code()).isEqualTo("microphone-inside-source");
    FloorPlan before =
        Floors.plan(Floors.hall(70), List.of(bodied), List.of(at(new Point3(7, 4.05, 1))));
    assertThat(before.faults()).isEmpty();
  }

  @Test
  void aBarrierThroughAMicrophoneIsRefused() {
    FloorPlan cut = plan(at(HERE)).plus(new PlacedBarrier(GOBO, 5.02, 4.5, 90));
    assertThat(onlyFault(cut).code()).isEqualTo("barrier-cuts-microphone");
    assertThat(plan(at(HERE)).plus(new PlacedBarrier(GOBO, 5.5, 4.5, 90)).faults()).isEmpty();
    assertThat(plan(at(new Point3(5, 4, 2))).plus(new PlacedBarrier(GOBO, 5, 4, 90)).faults())
        .isEmpty();
  }

  @Test
  void idsThatClashOrMissAreRefused() {
    FloorPlan twice =
        Floors.plan(Floors.hall(70), List.of(HARP, HARP), List.of(at(HERE), at(HERE)));
    assertThat(twice.faults())
        .extracting(FloorFault::code)
        .containsExactly("same-id-twice", "same-id-twice");
    FloorPlan missing = plan(Floors.microphone("mic", OMNI, HERE, HERE, "lute"));
    assertThat(onlyFault(missing).detail()).contains("lute");
  }

  @Test
  void noMatrixIsMadeOfAFaultyPlan() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BleedMatrix.of(plan(at(new Point3(-1, 4, 1))), 0))
        .withMessageContaining("outside-room");
  }

  @Test
  void theCostIsKnownBeforeItIsPaid() {
    assertThat(plan(at(HERE)).octavePaths(0)).isEqualTo(10);
    assertThat(plan(at(HERE)).octavePaths(1)).isEqualTo(70);
  }

  @Test
  void barriersAbsorbWithBothFaces() {
    FloorPlan with = plan(at(HERE)).plus(new PlacedBarrier(GOBO, 6, 4, 90));
    assertThat(with.furnishedRoom().absorptionAreaM2(Octave.HZ_1K, false))
        .isCloseTo(70 + 2 * 2.4 * 1.8 * 0.5, within(1e-9));
  }

  @Test
  void powerDividesOverTheOctavesAndAddsUpAgain() {
    Spectrum spectrum = Spectrum.of(SpectrumClass.MELODY, 196, 16000);
    Octaves perOctave = FloorSource.powerPerOctave(new SoundPower(91), spectrum);
    FloorSource violin = Floors.source("violin", perOctave, HERE, HARP.directivity());
    assertThat(perOctave.get(Octave.HZ_63)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(violin.power().db()).isCloseTo(91, within(1e-9));
    assertThat(violin.louder(-3).power().db()).isCloseTo(88, within(1e-9));
    assertThat(violin.highestHz()).isCloseTo(Octave.HZ_16K.upperHz(), within(1e-9));
  }

  @Test
  void barriersMicrophonesAndLiningsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Barrier("b", "b", 0, 1, 0, Octaves.filled(20), Octaves.filled(0.5)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Barrier("b", "b", 1, 1, 0, Octaves.filled(20), Octaves.filled(1.5)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PlacedBarrier(GOBO, 1, 1, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Floors.fader(at(HERE), Double.NEGATIVE_INFINITY));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lining("drape", -1, Octaves.filled(0.5)));
  }

  private static FloorFault onlyFault(FloorPlan plan) {
    assertThat(plan.faults()).hasSize(1);
    return plan.faults().get(0);
  }

  private static FloorMicrophone at(Point3 place) {
    return Floors.microphone("mic", OMNI, place, HARP.position(), "harp");
  }

  private static FloorPlan plan(FloorMicrophone microphone) {
    return Floors.plan(Floors.hall(70), List.of(HARP), List.of(microphone));
  }
}
