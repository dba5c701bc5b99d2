package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OctaveTest {
  @Test
  void exactMidbandsStandAtTheBaseTenSystem() {
    assertThat(Octave.HZ_1K.midHz()).isEqualTo(1000);
    assertThat(Octave.HZ_8K.midHz()).isCloseTo(7943.28, within(0.01));
    assertThat(Octave.HZ_31_5.midHz()).isCloseTo(31.623, within(0.001));
  }

  @Test
  void bandsAdjoin() {
    for (int i = 1; i < Octave.COUNT; i++) {
      assertThat(Octave.all().get(i).lowerHz())
          .isCloseTo(Octave.all().get(i - 1).upperHz(), within(1e-9));
    }
  }

  @Test
  void nominalAndExactMidbandsDifferByLessThanOneAndAHalfPerCent() {
    for (Octave octave : Octave.all()) {
      assertThat(octave.midHz() / octave.nominalHz()).isCloseTo(1, within(0.015));
    }
  }

  @Test
  void labelsReadAsTheTradeSaysThem() {
    assertThat(Octave.all())
        .extracting(Octave::label)
        .containsExactly("31.5", "63", "125", "250", "500", "1k", "2k", "4k", "8k", "16k");
  }

  @Test
  void wordsHaveTheUnit() {
    assertThat(Octave.all())
        .extracting(Octave::words)
        .startsWith("31.5 Hz", "63 Hz")
        .endsWith("8 kHz", "16 kHz");
  }

  @Test
  void octaveFiguresAreAValue() {
    double[] given = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    Octaves octaves = Octaves.of(given);
    given[0] = 99;
    octaves.toArray()[1] = 99;
    assertThat(octaves).isEqualTo(Octaves.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10));
    assertThat(octaves).hasSameHashCodeAs(Octaves.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10));
    assertThat(octaves).isNotEqualTo(Octaves.filled(1));
    assertThat(octaves.get(Octave.HZ_1K)).isEqualTo(6);
    assertThat(octaves.map(figure -> -figure).get(Octave.HZ_16K)).isEqualTo(-10);
  }

  @Test
  void octaveFiguresAreTenNumbers() {
    assertThatIllegalArgumentException().isThrownBy(() -> Octaves.of(1, 2, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> Octaves.filled(Double.NaN));
  }
}
