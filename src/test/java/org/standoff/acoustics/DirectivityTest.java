package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DirectivityTest {
  private static final Directivity BELL = new Directivity(1, 3, 7, 11);

  @Test
  void theIndexIsStraightOverLogFrequencyAndConstantOutside() {
    assertThat(BELL.indexDb(250)).isCloseTo(2, within(1e-9));
    assertThat(BELL.indexDb(2000)).isCloseTo(7, within(1e-9));
    assertThat(BELL.indexDb(4000)).isCloseTo(9, within(1e-9));
    assertThat(BELL.indexDb(20)).isEqualTo(1);
    assertThat(BELL.indexDb(20000)).isEqualTo(11);
  }

  @Test
  void anOmnidirectionalSourceIsEqualToAllSidesEvenBehind() {
    assertThat(Directivity.OMNI.factor(3000)).isEqualTo(1);
    assertThat(Directivity.OMNI.offAxisDb(3000, 180)).isEqualTo(0);
  }

  @Test
  void aDirectionalSourceIsLoudestOnItsAxis() {
    assertThat(BELL.offAxisDb(2000, 0)).isEqualTo(0);
    assertThat(BELL.offAxisDb(2000, 60)).isLessThan(BELL.offAxisDb(2000, 30));
    assertThat(BELL.offAxisDb(2000, 180)).isLessThan(-300);
  }

  @Test
  void aSourceLessDirectionalThanASphereIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Directivity(0, -0.1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Directivity(0, 0, 0, Double.NaN));
  }
}
