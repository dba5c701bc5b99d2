package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
  /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0, 0.5",
    "0.5, 0.6914624613",
    "1, 0.8413447461",
    "1.5, 0.9331927987",
    "2, 0.9772498681",
    "3, 0.9986501020"
  })
  void theDistributionMeetsTheHandbook(double x, double p) {
    assertThat(Normal.cumulative(x)).isCloseTo(p, within(1e-10));
    assertThat(Normal.cumulative(-x)).isCloseTo(1 - p, within(1e-10));
  }

  /** The usual critical values of statistical tables (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0.9, 1.2815515655446",
    "0.95, 1.6448536269515",
    "0.975, 1.9599639845401",
    "0.99, 2.3263478740408",
    "0.999, 3.0902323061678"
  })
  void theInverseMeetsTheTables(double p, double x) {
    assertThat(Normal.quantile(p)).isCloseTo(x, within(1e-12));
    assertThat(Normal.quantile(1 - p)).isCloseTo(-x, within(1e-12));
  }

  @Test
  void theDistributionMeetsAnIndependentErrorFunction() {
    for (double x = -8; x <= 8; x += 0.01) {
      double oracle = Erf.erfc(-x / Math.sqrt(2)) / 2;
      assertThat(Normal.cumulative(x) / oracle).isCloseTo(1, within(1e-8));
      assertThat(Normal.cumulative(x)).isCloseTo(oracle, within(1e-14));
    }
  }

  @Test
  void theInverseMeetsAnIndependentErrorFunctionFarIntoTheTails() {
    for (double lg = -12; lg < -0.31; lg += 0.05) {
      double p = Math.pow(10, lg);
      double back = Erf.erfc(-Normal.quantile(p) / Math.sqrt(2)) / 2;
      assertThat(back / p).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void theEndsAreInfinite() {
    assertThat(Normal.quantile(0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(Normal.quantile(1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(Normal.quantile(1.1)).isNaN();
    assertThat(Normal.quantile(Double.NaN)).isNaN();
    assertThat(Normal.cumulative(Double.NEGATIVE_INFINITY)).isEqualTo(0);
    assertThat(Normal.cumulative(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }
}
