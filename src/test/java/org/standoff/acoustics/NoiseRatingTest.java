package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseRatingTest {
  /** Derived: the tabled octaves summed with the A weights. */
  @ParameterizedTest
  @CsvSource({"15, 27.1", "20, 31.4", "25, 35.6", "30, 39.8", "35, 44.2", "40, 49.0"})
  void aCurveHasItsWeightedLevel(int curve, double dba) {
    assertThat(AWeighting.overOctaves(NoiseRating.nc(curve))).isCloseTo(dba, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({"15", "20", "25", "30", "35", "40"})
  void aCurveIsNotExceededByItself(int curve) {
    assertThat(NoiseRating.lowestNc(NoiseRating.nc(curve))).hasValue(curve);
    assertThat(NoiseRating.lowestNc(NoiseRating.nc(curve).map(level -> level + 0.1)))
        .isNotEqualTo(NoiseRating.lowestNc(NoiseRating.nc(curve)));
  }

  @Test
  void noiseOverTheHighestCurveHasNoRating() {
    assertThat(NoiseRating.lowestNc(Octaves.filled(60))).isEmpty();
  }

  @Test
  void octavesThatTheCurvesDoNotSpeakOfDoNotCount() {
    double[] rumble = NoiseRating.nc(20).toArray();
    rumble[Octave.HZ_31_5.ordinal()] = 90;
    assertThat(NoiseRating.lowestNc(Octaves.of(rumble))).hasValue(20);
  }

  @Test
  void aCurveThatIsNotTabledIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> NoiseRating.nc(22));
  }

  @Test
  void ratingNumbersAreTheLevelAtOneKilohertz() {
    assertThat(NoiseRating.nr(30).get(Octave.HZ_1K)).isEqualTo(30);
    assertThat(NoiseRating.rc(30).get(Octave.HZ_1K)).isEqualTo(30);
    assertThat(NoiseRating.rc(30).get(Octave.HZ_4K)).isEqualTo(20);
    assertThat(NoiseRating.rc(30).get(Octave.HZ_8K)).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void weightingAtZeroHertzIsSilence() {
    assertThat(AWeighting.db(0)).isEqualTo(Double.NEGATIVE_INFINITY);
  }
}
