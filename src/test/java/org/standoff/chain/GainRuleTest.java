package org.standoff.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.fixture.PreampBuilder;

class GainRuleTest {
  @ParameterizedTest(name = "{0} dB in steps of {3} dB from {1} to {2} dB: {4} dB")
  @CsvSource({
    "22.9, 0, 60, 1, 22",
    "22.0, 0, 60, 1, 22",
    "-0.1, 0, 60, 1, 0",
    "77.0, 0, 60, 1, 60",
    "22.9, 10, 60, 5, 20",
    "11.9, 1.5, 58.5, 3, 10.5",
    "59.0, 0, 58, 5, 55",
    "0.3, 0, 60, 0.1, 0.3",
  })
  void aGainIsRoundedDownToTheStepsAndHeldInsideTheRange(
      double wantedDb, double leastDb, double mostDb, double stepDb, double setDb) {
    assertThat(new GainRange(leastDb, mostDb, stepDb).settingFor(wantedDb))
        .isCloseTo(setDb, within(1e-9));
  }

  @Test
  void theVerdictSaysWhenAPadOrMoreGainIsNeeded() {
    Preamp preamp = PreampBuilder.aPreamp().build();
    GainRule rule = GainRule.target(-10);
    assertThat(rule.gain(preamp, 9)).isEqualTo(new Gain(-1, 0, GainVerdict.BELOW_RANGE));
    assertThat(rule.gain(preamp, -12)).isEqualTo(new Gain(20, 20, GainVerdict.WITHIN));
    assertThat(rule.gain(preamp, -60)).isEqualTo(new Gain(68, 60, GainVerdict.ABOVE_RANGE));
  }

  @Test
  void theGuardedPeakHoldsTheGainBackWhereTheTargetAloneWouldNot() {
    Preamp preamp = PreampBuilder.aPreamp().build();
    GainRule rule = new GainRule(Optional.empty(), -3, 8, 4);
    // 18 dBu less 4 dB wanted less 8 dB of guard: the typical peak may come to 6 dBu
    assertThat(rule.gain(preamp, -20).wantedDb()).isEqualTo(26);
  }

  @Test
  void anOutputLowerThanFullScaleHoldsTheGainBackToo() {
    Preamp preamp = PreampBuilder.aPreamp().maximumOutput(12).build();
    GainRule rule = new GainRule(Optional.empty(), -3, 0, 4);
    assertThat(rule.gain(preamp, -20).wantedDb()).isEqualTo(28);
  }

  @Test
  void aToldGainIsKeptEvenOutsideTheRange() {
    Preamp preamp = PreampBuilder.aPreamp().build();
    assertThat(GainRule.given(70).gain(preamp, 0)).isEqualTo(new Gain(70, 70, GainVerdict.GIVEN));
  }
}
