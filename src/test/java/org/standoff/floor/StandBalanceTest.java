package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StandBalanceTest {
  @Test
  void aLongBoomOnALightStandNeedsACounterweight() {
    StandBalance light = new StandBalance(1, 2, 1, 2, 0.4, 0.8);
    assertThat(light.counterMassKg()).isCloseTo((1.6 + 0.6 - 0.8) / 1.2, within(1e-12));
  }

  @Test
  void withItsCounterweightTheMomentsCancel() {
    StandBalance boom = new StandBalance(0.9, 2.2, 1.1, 3, 0.35, 0.9);
    double holding = boom.counterMassKg() * (0.9 + 0.35) + 3 * 0.35;
    double tipping = 0.9 * (2.2 - 0.35) + 1.1 * (1.1 - 0.35);
    assertThat(holding).isCloseTo(tipping, within(1e-12));
  }

  @Test
  void aShortBoomIsStableWithout() {
    assertThat(new StandBalance(0.5, 0.3, 0.4, 4, 0.35, 0.3).counterMassKg()).isNegative();
  }

  @Test
  void standsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new StandBalance(-1, 2, 1, 2, 0.4, 0.8));
    assertThatIllegalArgumentException().isThrownBy(() -> new StandBalance(1, 2, 1, 2, 0, 0.8));
  }
}
