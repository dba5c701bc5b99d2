package org.standoff.rest.media;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LineTest {
  @Test
  void namesAndValuesStandBetweenBlanksAndTheLineEnds() {
    assertThat(new Line().add("microphone", "core/a").add("verdict", "fits").text())
        .isEqualTo("microphone=core/a verdict=fits\n");
  }

  @Test
  void figuresAreRoundedByTheUnitInTheirName() {
    assertThat(
            new Line()
                .add("gain_db", 12.0)
                .add("peak_dbfs", -10.456)
                .add("clip_probability", 0.00049)
                .text())
        .isEqualTo("gain_db=12 peak_dbfs=-10.46 clip_probability=0.0005\n");
  }

  @Test
  void aTextWithABlankStandsInQuotesAndStaysOneValue() {
    assertThat(new Line().add("because", "clips \"hard\"\nby 3 dB").text())
        .isEqualTo("because=\"clips 'hard' by 3 dB\"\n");
  }

  @Test
  void whatIsNotThereIsAnEmptyText() {
    assertThat(new Line().add("because", "").add("noise_dba", Double.NaN).text())
        .isEqualTo("because=\"\" noise_dba=\"\"\n");
  }
}
