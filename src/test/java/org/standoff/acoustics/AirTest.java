package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AirTest {
  @Test
  void theLawOfTheSpeedOfSoundIsNamed() {
    assertThat(Air.STANDARD.speedLaw()).isEqualTo("iso-9613-1");
    assertThat(Air.at(20, 50).speedLaw()).isEqualTo("cramer-1993");
  }

  @Test
  void aWarmHallIsFasterThanAColdOne() {
    assertThat(Air.at(12).speedOfSoundMPerS()).isCloseTo(338.5, within(0.05));
    assertThat(Air.at(21).speedOfSoundMPerS()).isCloseTo(343.8, within(0.05));
  }

  @Test
  void dampAirIsFasterThanDryAir() {
    assertThat(Air.at(25, 90).speedOfSoundMPerS())
        .isGreaterThan(Air.at(25, 10).speedOfSoundMPerS() + 1);
  }

  @Test
  void unknownHumidityIsTakenAsFiftyPerCentForAbsorption() {
    assertThat(Air.at(20).attenuationDbPerM(8000))
        .isEqualTo(Air.at(20, 50).attenuationDbPerM(8000))
        .isNotCloseTo(Air.at(20, 30).attenuationDbPerM(8000), within(0.01));
  }

  @Test
  void stillAirDoesNotAbsorbAtZeroHertz() {
    assertThat(Air.STANDARD.attenuationDbPerM(0)).isEqualTo(0);
  }

  @Test
  void aSpeedOutsideTheRangeOfThePolynomialIsFlagged() {
    assertThat(Air.at(35, 50).validity())
        .extracting(Validity::code)
        .containsExactly("outside-cramer-range");
    assertThat(new Air(20, OptionalDouble.of(50), 70).validity()).hasSize(1);
    assertThat(Air.at(35).validity()).isEmpty();
    assertThat(Air.at(20, 50).validity()).isEmpty();
  }

  @Test
  void airThatNoRoomHasIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Air.at(51));
    assertThatIllegalArgumentException().isThrownBy(() -> Air.at(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> Air.at(20, 101));
    assertThatIllegalArgumentException().isThrownBy(() -> new Air(20, OptionalDouble.empty(), 0));
  }
}
