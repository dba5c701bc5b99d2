package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UncertainDbTest {
  private static final UncertainDb SNARE = new UncertainDb(141, 6);

  @Test
  void lowAndHighAreTheFifthAndNinetyFifthPercentile() {
    assertThat(SNARE.low()).isEqualTo(135);
    assertThat(SNARE.typical()).isEqualTo(141);
    assertThat(SNARE.high()).isEqualTo(147);
    assertThat(SNARE.percentile(0.05)).isCloseTo(135, within(1e-9));
    assertThat(SNARE.percentile(0.5)).isCloseTo(141, within(1e-9));
    assertThat(SNARE.percentile(0.95)).isCloseTo(147, within(1e-9));
    assertThat(SNARE.sigmaDb()).isCloseTo(3.6478, within(1e-4));
  }

  @Test
  void probabilitiesFollowFromThePercentiles() {
    assertThat(SNARE.probabilityAbove(147)).isCloseTo(0.05, within(1e-12));
    assertThat(SNARE.probabilityAbove(141)).isCloseTo(0.5, within(1e-12));
    assertThat(SNARE.probabilityAbove(135)).isCloseTo(0.95, within(1e-12));
    assertThat(SNARE.probabilityAbove(141 + SNARE.sigmaDb())).isCloseTo(0.158655, within(1e-6));
  }

  @Test
  void independentSpreadsAddInPower() {
    UncertainDb sum = SNARE.with(new UncertainDb(-10, 2.5));
    assertThat(sum.typicalDb()).isEqualTo(131);
    assertThat(sum.spreadDb()).isCloseTo(6.5, within(1e-12));
    assertThat(SNARE.plus(-18.7)).isEqualTo(new UncertainDb(141 - 18.7, 6));
  }

  @Test
  void aSureFigureHasOneValue() {
    UncertainDb sure = UncertainDb.exactly(120);
    assertThat(sure.percentile(0.99)).isEqualTo(120);
    assertThat(sure.probabilityAbove(120)).isEqualTo(0);
    assertThat(sure.probabilityAbove(119.9)).isEqualTo(1);
  }

  @Test
  void aSilentSourceNeverExceedsALimit() {
    assertThat(SNARE.plus(Double.NEGATIVE_INFINITY).probabilityAbove(20)).isEqualTo(0);
  }

  @Test
  void figuresWithoutMeaningAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new UncertainDb(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new UncertainDb(100, -1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new UncertainDb(100, Double.POSITIVE_INFINITY));
  }
}
