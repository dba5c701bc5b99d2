package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExposureTest {
  private static final List<Exposure> DAY = List.of(new Exposure(90, 4), new Exposure(97.5, 1));

  @Test
  void rulesAnswerForThemselvesAndDiffer() {
    assertThat(ExposureRule.NIOSH_REL.dosePercent(DAY)).isCloseTo(158.74 + 224.49, within(0.01));
    assertThat(ExposureRule.OSHA_PEL.dosePercent(DAY)).isCloseTo(50 + 35.36, within(0.01));
    assertThat(ExposureRule.NIOSH_REL.id()).isEqualTo("niosh-rel");
    assertThat(ExposureRule.OSHA_PEL.criterionDba()).isEqualTo(90);
    assertThat(ExposureRule.OSHA_PEL.exchangeDb()).isEqualTo(5);
  }

  @Test
  void oneExchangeHalvesTheAllowedTime() {
    for (ExposureRule rule : ExposureRule.values()) {
      assertThat(rule.allowedHours(rule.criterionDba())).isEqualTo(8);
      assertThat(rule.allowedHours(rule.criterionDba() + rule.exchangeDb())).isEqualTo(4);
    }
  }

  @Test
  void silenceCostsNothing() {
    List<Exposure> silence = List.of(new Exposure(Double.NEGATIVE_INFINITY, 8));
    assertThat(ExposureRule.NIOSH_REL.dosePercent(silence)).isEqualTo(0);
    assertThat(DailyExposure.levelDba(silence)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(DailyExposure.levelDba(List.of())).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void anEightHourDayAtOneLevelIsThatLevel() {
    assertThat(DailyExposure.levelDba(List.of(new Exposure(87, 5), new Exposure(87, 3))))
        .isCloseTo(87, within(1e-12));
  }

  @Test
  void theDirectivesValuesAreInPascal() {
    assertThat(EuActionValue.LOWER_ACTION.peakPa()).isEqualTo(112);
    assertThat(EuActionValue.UPPER_ACTION.dailyDba()).isEqualTo(85);
    assertThat(EuActionValue.LIMIT.id()).isEqualTo("eu-limit");
  }

  @Test
  void exposuresThatCannotBeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Exposure(90, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Exposure(Double.NaN, 1));
  }
}
