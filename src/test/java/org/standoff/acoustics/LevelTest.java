package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LevelTest {
  private static final double SILENCE = Double.NEGATIVE_INFINITY;

  @Test
  void ratiosAndDecibelsLeadBackToEachOther() {
    assertThat(Level.ofPowerRatio(Level.powerRatio(-37.5))).isCloseTo(-37.5, within(1e-12));
    assertThat(Level.ofAmplitudeRatio(Level.amplitudeRatio(12.5))).isCloseTo(12.5, within(1e-12));
    assertThat(Level.powerRatio(10)).isEqualTo(10);
    assertThat(Level.amplitudeRatio(20)).isEqualTo(10);
  }

  @Test
  void aSilentSourceSurvivesEverySum() {
    assertThat(Level.energySum()).isEqualTo(SILENCE);
    assertThat(Level.energySum(SILENCE, SILENCE)).isEqualTo(SILENCE);
    assertThat(Level.energySum(SILENCE, 60)).isEqualTo(60);
    assertThat(Level.inPhaseSum(SILENCE, 60)).isEqualTo(60);
    assertThat(Level.phasorSum(60, SILENCE, 123)).isCloseTo(60, within(1e-12));
  }

  @Test
  void aLevelThatIsNoNumberIsNotHiddenByASum() {
    assertThat(Level.energySum(60, Double.NaN)).isNaN();
    assertThat(Level.inPhaseSum(Double.NaN, 60)).isNaN();
  }

  @Test
  void veryLargeLevelsDoNotOverflowInASum() {
    assertThat(Level.energySum(5000, 5000)).isCloseTo(5000 + Level.SINE_CREST_DB, within(1e-9));
  }

  @Test
  void oppositePolarityCancels() {
    assertThat(Level.phasorSum(80, 80, 180)).isLessThan(-200);
    assertThat(Level.phasorSum(80, 74, 180))
        .isCloseTo(80 + 20 * Math.log10(1 - Math.pow(10, -0.3)), within(1e-9));
  }

  @Test
  void peakAndRmsLeadToEachOtherByTheCrestOfASine() {
    assertThat(new RmsSpl(94).sinePeak().db()).isCloseTo(97.0103, within(1e-4));
    assertThat(new PeakSpl(140).asSine().sinePeak()).isEqualTo(new PeakSpl(140));
    assertThat(RmsSpl.ONE_PASCAL_DB).isCloseTo(93.9794, within(1e-4));
    assertThat(PeakSpl.ofPascals(200).db()).isCloseTo(140, within(1e-9));
    assertThat(new PeakSpl(120).plus(-20)).isEqualTo(new PeakSpl(100));
    assertThat(new RmsSpl(60).plus(6)).isEqualTo(new RmsSpl(66));
  }

  @Test
  void aLevelIsNeverNotANumber() {
    assertThatIllegalArgumentException().isThrownBy(() -> new RmsSpl(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new PeakSpl(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new SoundPower(Double.NaN));
  }

  @Test
  void soundPowerAndFreeFieldLevelLeadBackToEachOther() {
    RmsSpl level = new SoundPower(95).freeField(0.2, 2);
    assertThat(SoundPower.ofFreeField(level, 0.2, 2).db()).isCloseTo(95, within(1e-12));
    assertThat(new SoundPower(120).watts()).isCloseTo(1, within(1e-12));
    assertThat(new SoundPower(90).plus(3)).isEqualTo(new SoundPower(93));
  }
}
