package org.standoff.floor.published;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.fixture.CheckTable;
import org.standoff.floor.DailyExposure;
import org.standoff.floor.EuActionValue;
import org.standoff.floor.Exposure;
import org.standoff.floor.ExposureRule;
import org.standoff.floor.StandBalance;

/** Topic N: NIOSH, OSHA, Directive 2003/10/EC and the balance of a boom. */
class ExposureChecksTest {
  private static final double MINUTES = 60;

  @TestFactory
  Stream<DynamicTest> exposure() {
    return CheckTable.ofTopics("N-exposure")
        .row("N01", () -> ExposureRule.NIOSH_REL.allowedHours(85))
        .row("N02", () -> MINUTES * ExposureRule.NIOSH_REL.allowedHours(94))
        .row("N03", () -> MINUTES * ExposureRule.NIOSH_REL.allowedHours(100))
        .row("N04", () -> MINUTES * ExposureRule.NIOSH_REL.allowedHours(106))
        .row("N05", () -> ExposureRule.OSHA_PEL.allowedHours(100))
        .row("N06", () -> ExposureRule.OSHA_PEL.allowedHours(95))
        .row(
            "N07",
            () ->
                ExposureRule.NIOSH_REL.dosePercent(
                    List.of(new Exposure(91, 2), new Exposure(100, 0.25))))
        .row("N08", () -> DailyExposure.levelDba(List.of(new Exposure(95, 3))))
        .row("N09", () -> EuActionValue.LOWER_ACTION.peak().db())
        .row("N10", () -> EuActionValue.UPPER_ACTION.peak().db())
        .row("N11", () -> EuActionValue.LIMIT.peak().db())
        .row("N12", () -> EuActionValue.LIMIT.dailyDba())
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> stands() {
    return CheckTable.ofTopics("N-stands")
        .row("N17", () -> new StandBalance(0.5, 1.5, 0.8, 4, 0.35, 0.6).counterMassKg())
        .tests();
  }
}
