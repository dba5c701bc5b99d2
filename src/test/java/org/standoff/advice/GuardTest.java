package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standoff.acoustics.UncertainDb;
import org.standoff.chain.Headrooms;

class GuardTest {
  private static final UncertainDb PEAK = new UncertainDb(130, 6);

  @Test
  void atTheNinetyFifthPercentileTheGuardIsTheSpread() {
    Guard guard = Guard.of(PEAK, 0, 95);
    assertThat(guard.everyStageDb()).isCloseTo(6, within(1e-9));
    assertThat(guard.electronicsDb()).isCloseTo(6, within(1e-9));
  }

  @Test
  void atTheMedianNothingIsGuarded() {
    assertThat(Guard.of(PEAK, 3, 50).electronicsDb()).isCloseTo(0, within(1e-9));
  }

  @Test
  void theSheetsSpreadAddsInPowerAndOnlyAtTheElectronics() {
    Guard guard = Guard.of(PEAK, 3, 95);
    assertThat(guard.everyStageDb()).isCloseTo(6, within(1e-9));
    assertThat(guard.electronicsDb()).isCloseTo(Math.sqrt(45), within(1e-9));
    Headrooms left = guard.guarded(new Headrooms(10, 11, 12, 13));
    assertThat(left.electronicsDb()).isCloseTo(10 - Math.sqrt(45), within(1e-9));
    assertThat(left.preampInputDb()).isCloseTo(5, within(1e-9));
    assertThat(left.preampOutputDb()).isCloseTo(6, within(1e-9));
    assertThat(left.converterDb()).isCloseTo(7, within(1e-9));
  }

  @Test
  void aHigherPercentileGuardsMore() {
    // 99 % is 2.3263 and 95 % 1.6449 standard deviations (tables of the normal distribution)
    assertThat(Guard.of(PEAK, 0, 99).everyStageDb()).isCloseTo(6 * 2.3263 / 1.6449, within(0.001));
  }
}
