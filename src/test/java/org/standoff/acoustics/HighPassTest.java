package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HighPassTest {
  @Test
  void atTheCornerTheOutputLeadsByFortyFiveDegreesAnOrder() {
    for (int order = 1; order <= 4; order++) {
      assertThat(new HighPass(80, order).leadDeg(80)).isCloseTo(45.0 * order, within(1e-9));
    }
  }

  @Test
  void theLeadFollowsTheTransferFunction() {
    double x = 130.0 / 80;
    assertThat(new HighPass(80, 1).leadDeg(130))
        .isCloseTo(Math.toDegrees(Math.atan(1 / x)), within(1e-9));
    assertThat(new HighPass(80, 2).leadDeg(130))
        .isCloseTo(180 - Math.toDegrees(Math.atan2(Math.sqrt(2) * x, 1 - x * x)), within(1e-9));
  }

  @Test
  void farFromTheCornerItTendsToItsSlopeOrToNothing() {
    HighPass filter = new HighPass(80, 3);
    assertThat(filter.slopeDbPerOctave()).isEqualTo(18);
    assertThat(filter.gainDb(2) - filter.gainDb(1)).isCloseTo(18.06, within(0.01));
    assertThat(filter.gainDb(20000)).isCloseTo(0, within(1e-9));
    assertThat(filter.gainDb(0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(filter.leadDeg(0.001)).isCloseTo(270, within(0.01));
    assertThat(filter.leadDeg(1e7)).isCloseTo(0, within(0.01));
  }

  @Test
  void powerGainIsTheSameFactAsTheGain() {
    HighPass filter = new HighPass(40, 2);
    assertThat(10 * Math.log10(filter.powerGain(33))).isCloseTo(filter.gainDb(33), within(1e-12));
  }

  @Test
  void filtersThatNobodyBuildsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new HighPass(0, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new HighPass(80, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new HighPass(80, 9));
    assertThatIllegalArgumentException().isThrownBy(() -> new HighPass(Double.NaN, 2));
  }
}
