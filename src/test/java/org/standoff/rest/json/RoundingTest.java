package org.standoff.rest.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {

  @ParameterizedTest
  @CsvSource({
    "gain_db, 1.23456, 1.23",
    "self_noise_dba, 1.23456, 1.23",
    "output_dbu, 1.23456, 1.23",
    "output_dbv, 1.23456, 1.23",
    "peak_dbfs, -1.23456, -1.23",
    "peak_db_spl, 1.23456, 1.23",
    "distance_m, 1.23456, 1.2346",
    "corner_hz, 1.26, 1.3",
    "azimuth_deg, 1.23456, 1.23",
    "delay_ms, 1.23456, 1.2346",
    "decay_s, 1.23456, 1.235",
    "loss_percent, 1.23456, 1.23",
    "loss_pct, 1.23456, 1.23",
    "clip_probability, 0.123456, 0.1235",
    "probability, 0.123456, 0.1235",
    "coefficient, 0.123456789, 0.123457",
    "volume_m3, 123456789, 123457000",
    "sensitivity_mv_per_pa, 14.12345678, 14.1235",
  })
  void theUnitAtTheEndOfTheNameSaysHowExactlyAFigureIsTold(String name, double value, double told) {
    assertThat(Rounding.of(name).apply(value)).isEqualTo(told);
  }

  @Test
  void nothingIsToldAsMinusNothing() {
    assertThat(1 / Rounding.of("gain_db").apply(-0.001)).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
