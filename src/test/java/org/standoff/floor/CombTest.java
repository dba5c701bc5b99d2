package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CombTest {
  @Test
  void aToneAtANotchDipsAndOneBetweenNotchesPeaks() {
    Comb comb = new Comb(6, 2, false);
    assertThat(comb.toneDb(comb.firstNotchHz())).isCloseTo(comb.dipDb(), within(1e-9));
    assertThat(comb.toneDb(comb.notchSpacingHz())).isCloseTo(comb.peakDb(), within(1e-9));
    Comb inverted = new Comb(6, 2, true);
    assertThat(inverted.toneDb(0)).isCloseTo(inverted.dipDb(), within(1e-9));
    assertThat(inverted.toneDb(inverted.firstNotchHz())).isCloseTo(inverted.dipDb(), within(1e-9));
  }

  @Test
  void whatIsFarApartInLevelHardlyCombs() {
    assertThat(new Comb(Double.POSITIVE_INFINITY, 1, false).rippleDb()).isEqualTo(0);
    assertThat(new Comb(0, 1, false).dipDb()).isEqualTo(Double.NEGATIVE_INFINITY);
    double differenceDb = Comb.differenceOfRippleDb(3);
    assertThat(new Comb(differenceDb, 1, false).rippleDb()).isCloseTo(3, within(1e-9));
  }

  @Test
  void withoutDelayThereIsNoNotch() {
    assertThat(Comb.of(90, 84, 0, false).firstNotchHz()).isEqualTo(Double.POSITIVE_INFINITY);
    double silence = Double.NEGATIVE_INFINITY;
    assertThat(Comb.of(silence, silence, 1, false).levelDifferenceDb()).isEqualTo(0);
    assertThat(Comb.of(84, 90, -2, false)).isEqualTo(new Comb(6, 2, false));
  }

  @Test
  void combsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Comb(-1, 1, false));
    assertThatIllegalArgumentException().isThrownBy(() -> new Comb(1, Double.NaN, false));
  }
}
