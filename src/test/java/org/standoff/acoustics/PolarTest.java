package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PolarTest {
  @Test
  void theRearLobeTurnsThePolarityOver() {
    assertThat(PatternName.FIGURE_8.ideal().pressure(-1)).isEqualTo(-1);
    assertThat(PatternName.HYPERCARDIOID.ideal().pressure(-1)).isEqualTo(-0.5);
    assertThat(PatternName.WIDE_CARDIOID.ideal().pressure(-1)).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void aNullIsCappedWhereAsked() {
    Polar cardioid = PatternName.CARDIOID.ideal();
    assertThat(cardioid.levelDb(180)).isLessThan(-300);
    assertThat(cardioid.levelDbCapped(180, Polar.DEFAULT_REJECTION_CAP_DB)).isEqualTo(-20);
    assertThat(cardioid.levelDbCapped(90, 20)).isEqualTo(cardioid.levelDb(90));
  }

  @Test
  void anOmniHasNoAngleOfPickupAndNoNull() {
    Polar omni = PatternName.OMNI.ideal();
    assertThat(omni.totalPickupAngleDeg(3)).isEmpty();
    assertThat(omni.nullAngleDeg()).isEmpty();
    assertThat(omni.levelDb(137)).isEqualTo(0);
  }

  @Test
  void aWideCardioidNeverFallsByTenDecibels() {
    Polar wide = PatternName.WIDE_CARDIOID.ideal();
    assertThat(wide.totalPickupAngleDeg(10)).isEmpty();
    assertThat(wide.totalPickupAngleDeg(6).orElseThrow()).isCloseTo(263.0, within(0.1));
    assertThat(wide.nullAngleDeg()).isEmpty();
  }

  @Test
  void theTwoWideCardioidsInUseDiffer() {
    Polar wider = Polar.firstOrder(0.75);
    assertThat(wider.directivityIndexDb()).isCloseTo(2.34, within(0.005));
    assertThat(wider.totalPickupAngleDeg(3).orElseThrow()).isCloseTo(199.4, within(0.1));
    assertThat(wider.frontShare()).isCloseTo(0.6607, within(0.0001));
  }

  @Test
  void aBoundaryMicrophoneHearsHalfOfADiffuseField() {
    Polar boundary = PatternName.HALF_OMNI.ideal();
    assertThat(boundary.randomEnergyEfficiency()).isEqualTo(0.5);
    assertThat(boundary.directivityIndexDb()).isCloseTo(3.0103, within(1e-4));
    assertThat(boundary.levelDb(90)).isEqualTo(0);
  }

  @Test
  void figuresThatNoPatternHasAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Polar.firstOrder(1.01));
    assertThatIllegalArgumentException().isThrownBy(() -> Polar.firstOrder(-0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> Polar.firstOrder(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Polar.firstOrder(0.5).totalPickupAngleDeg(-1));
  }

  @Test
  void everyNameIsFoundByItsId() {
    for (PatternName name : PatternName.values()) {
      assertThat(PatternName.ofId(name.id())).contains(name);
    }
    assertThat(PatternName.ofId("figure-of-8")).isEmpty();
  }
}
