package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** An invented hall of boards, bare brick and drapes; its figures follow from Sabine by hand. */
class RoomTest {
  private static final double VOLUME_M3 = 655;
  private static final Room HALL = hall(hallAreas());

  @Test
  void theHallsDecayFollowsFromItsSurfaces() {
    assertThat(HALL.sabineS(Octave.HZ_125)).isCloseTo(1.5, within(0.05));
    assertThat(HALL.sabineS(Octave.HZ_250)).isCloseTo(1.6, within(0.05));
    assertThat(HALL.sabineS(Octave.HZ_500)).isCloseTo(1.5, within(0.05));
    assertThat(HALL.sabineS(Octave.HZ_1K)).isCloseTo(1.5, within(0.05));
    assertThat(HALL.sabineS(Octave.HZ_2K)).isCloseTo(1.3, within(0.05));
    assertThat(HALL.sabineS(Octave.HZ_4K)).isCloseTo(1.15, within(0.03));
  }

  @Test
  void theHallsSingleFiguresFollowFromItsMiddleOctaves() {
    assertThat(HALL.midAbsorptionAreaM2()).isCloseTo(70, within(0.5));
    assertThat(HALL.midAbsorptionAreaM2() / HALL.surfaceM2()).isCloseTo(0.148, within(0.001));
    assertThat(Reverberation.criticalDistanceM(HALL.midAbsorptionAreaM2(), 1))
        .isCloseTo(1.18, within(0.005));
    assertThat(HALL.schroederHz()).isCloseTo(96, within(0.5));
    assertThat(HALL.lateLevelDb(new SoundPower(108), HALL.midAbsorptionAreaM2(), 0))
        .as("94.9 dB when the area is rounded to 70 m²")
        .isCloseTo(94.9, within(0.1));
  }

  @Test
  void octaveFiguresUseTheOctavesOwnArea() {
    double area = HALL.absorptionAreaM2().get(Octave.HZ_4K);
    assertThat(HALL.lateLevelDb(new SoundPower(100), Octave.HZ_4K, 1))
        .isEqualTo(LateField.levelDb(100, area, HALL.surfaceM2(), 1));
    assertThat(HALL.criticalDistanceM(Octave.HZ_4K, 2))
        .isEqualTo(Reverberation.criticalDistanceM(area, 2));
    assertThat(HALL.meanAbsorption(Octave.HZ_4K)).isEqualTo(area / 474);
  }

  @Test
  void airIsAddedOnlyWhereAsked() {
    double fourMv = 4 * Air.STANDARD.energyAttenuationPerM(Octave.HZ_8K.midHz()) * VOLUME_M3;
    assertThat(HALL.absorptionAreaM2(Octave.HZ_8K, false))
        .isEqualTo(HALL.absorptionAreaM2().get(Octave.HZ_8K));
    assertThat(HALL.absorptionAreaM2(Octave.HZ_8K, true))
        .isCloseTo(HALL.absorptionAreaM2().get(Octave.HZ_8K) + fourMv, within(1e-9));
    assertThat(HALL.sabineS(Octave.HZ_8K, true)).isLessThan(HALL.sabineS(Octave.HZ_8K));
    assertThat(HALL.eyringS(Octave.HZ_8K, true)).isLessThan(HALL.eyringS(Octave.HZ_8K));
  }

  @Test
  void eyringIsShorterThanSabineAndZeroInADeadRoom() {
    assertThat(HALL.eyringS(Octave.HZ_500)).isLessThan(HALL.sabineS(Octave.HZ_500));
    assertThat(Reverberation.eyringS(60, 94, 94, 0)).isEqualTo(0);
    assertThat(Reverberation.sabineS(60, 94)).as("Sabine's fault").isGreaterThan(0.1);
  }

  @Test
  void aDeadRoomHasNoLateField() {
    assertThat(LateField.levelDb(100, 94, 94, 0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(LateField.roomConstantM2(94, 94)).isEqualTo(Double.POSITIVE_INFINITY);
  }

  @Test
  void lawsOutsideTheirRangeAreFlagged() {
    assertThat(HALL.validity(Octave.HZ_500)).isEmpty();
    assertThat(HALL.validity(Octave.HZ_63, Octave.HZ_125))
        .extracting(Validity::code)
        .containsExactly("below-schroeder");
    assertThat(hall(Octaves.filled(120)).validity(Octave.HZ_1K))
        .extracting(Validity::code)
        .containsExactly("sabine-above-0.2");
    Room corridor = new Room(96, 210, Octaves.filled(20), new Box(20, 2, 2.4), Air.STANDARD, 30);
    assertThat(corridor.validity(Octave.HZ_1K))
        .extracting(Validity::code)
        .containsExactly("not-a-mixing-room");
  }

  @Test
  void theStandInBoxKeepsPlanAndVolume() {
    Box box = Box.ofVolume(14, 9, VOLUME_M3);
    assertThat(box.heightM()).isCloseTo(5.2, within(0.01));
    assertThat(box.volumeM3()).isCloseTo(VOLUME_M3, within(1e-9));
    assertThat(new Box(2, 3, 4).surfaceM2()).isEqualTo(52);
  }

  @Test
  void roomsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Box(0, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> hall(Octaves.filled(0)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Room(-1, 1, Octaves.filled(1), new Box(1, 1, 1), Air.STANDARD, 30));
  }

  private static Room hall(Octaves areasM2) {
    return new Room(VOLUME_M3, 474, areasM2, Box.ofVolume(14, 9, VOLUME_M3), Air.STANDARD, 28);
  }

  /** Area and absorption coefficients at 125 Hz to 4 kHz; the ends are carried outwards. */
  private static Octaves hallAreas() {
    double[][] surfaces = {
      {126, 0.15, 0.11, 0.10, 0.07, 0.06, 0.07},
      {148, 0.24, 0.19, 0.14, 0.08, 0.13, 0.10},
      {146, 0.03, 0.03, 0.03, 0.04, 0.05, 0.07},
      {24, 0.18, 0.06, 0.04, 0.03, 0.02, 0.02},
      {30, 0.14, 0.35, 0.55, 0.72, 0.70, 0.65}
    };
    double[] areas = {3, 8, 15, 22, 26, 38};
    for (double[] surface : surfaces) {
      for (int band = 0; band < areas.length; band++) {
        areas[band] += surface[0] * surface[band + 1];
      }
    }
    return Octaves.of(
        areas[0], areas[0], areas[0], areas[1], areas[2], areas[3], areas[4], areas[5], areas[5],
        areas[5]);
  }
}
