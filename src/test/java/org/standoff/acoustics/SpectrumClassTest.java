package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SpectrumClassTest {
  /** Assumed shapes in whole decibels; {@link SpectrumClass#weights} takes out what is left. */
  @ParameterizedTest
  @EnumSource
  void octaveLevelsStandAgainstTheirSumWithinADecibel(SpectrumClass spectrum) {
    assertThat(Level.energySum(spectrum.powerDb().toArray())).isCloseTo(0, within(1.0));
  }

  @ParameterizedTest
  @EnumSource
  void sharesSumToOneWhateverTheRange(SpectrumClass spectrum) {
    for (double[] range : new double[][] {{20, 20000}, {82.4, 5000}, {400, 450}, {16.4, 10000}}) {
      assertThat(Arrays.stream(spectrum.weights(range[0], range[1])).sum())
          .isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void onlyOctavesThatOverlapTheRangeAreKept() {
    double[] shares = SpectrumClass.WIDE.weights(45, 5000);
    assertThat(shares[Octave.HZ_31_5.ordinal()]).as("ends at 44.7 Hz").isEqualTo(0);
    assertThat(shares[Octave.HZ_63.ordinal()]).isGreaterThan(0);
    assertThat(shares[Octave.HZ_4K.ordinal()]).isGreaterThan(0);
    assertThat(shares[Octave.HZ_8K.ordinal()]).as("begins at 5623 Hz").isEqualTo(0);
    assertThat(shares[Octave.HZ_500.ordinal()] / shares[Octave.HZ_125.ordinal()])
        .as("−5 dB against −8 dB")
        .isCloseTo(Math.pow(10, 0.3), within(1e-9));
  }

  @Test
  void aRangeWithoutAnOctaveIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> SpectrumClass.BASS.weights(5, 10));
    assertThatIllegalArgumentException().isThrownBy(() -> SpectrumClass.BASS.weights(500, 400));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SpectrumClass.BASS.weights(Double.NaN, 400));
  }

  @ParameterizedTest
  @EnumSource
  void everyClassIsFoundByItsId(SpectrumClass spectrum) {
    assertThat(SpectrumClass.ofId(spectrum.id())).contains(spectrum);
  }

  @Test
  void anUnknownClassIsEmpty() {
    assertThat(SpectrumClass.ofId("loud")).isEmpty();
  }
}
