package org.standoff.kit.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.kit.Period;

/** Counted by hand; 11 June 2027 is a Friday. The houses are those of the demo. */
class ChargeTest {
  private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
  private static final HouseTerms OSTREL = house("1.5", 0);
  private static final HouseTerms VENNICK = house("1", 6000);
  private static final Period SESSION = period("2027-06-11T10:00", "2027-06-14T11:00");

  @Test
  void fridayToMondayIsThreeAndAHalfDaysAtOneHouseAndThreeAtTheOther() {
    // Friday 1, Saturday and Sunday 1.5, Monday 1
    assertThat(Charge.days(OSTREL, SESSION)).isEqualTo(3.5);
    // Friday 1, Saturday and Sunday 1, Monday 1
    assertThat(Charge.days(VENNICK, SESSION)).isEqualTo(3);
  }

  @Test
  void fourSmallCondensersCost126AtOneHouseAndTwoCost48AtTheOther() {
    // 4 x 9.00 x 3.5 = 126.00; 2 x 8.00 x 3 = 48.00, under the least charge of 60.00
    assertThat(4 * Charge.minor(OSTREL, 900, SESSION)).isEqualTo(12_600);
    assertThat(2 * Charge.minor(VENNICK, 800, SESSION)).isEqualTo(4_800);
    assertThat(Charge.whole(OSTREL, 12_600)).isEqualTo(12_600);
    assertThat(Charge.whole(VENNICK, 4_800)).isEqualTo(6_000);
    assertThat(Charge.whole(VENNICK, 6_001)).isEqualTo(6_001);
  }

  @ParameterizedTest
  @CsvSource({
    // Saturday alone, Sunday alone: half of the weekend's 1.5
    "2027-06-12T10:00, 2027-06-12T18:00, 0.75",
    "2027-06-13T10:00, 2027-06-13T18:00, 0.75",
    "2027-06-12T10:00, 2027-06-13T18:00, 1.5",
    // a Sunday and the Saturday after it belong to two weekends: 0.75 + 5 + 0.75
    "2027-06-13T10:00, 2027-06-19T18:00, 6.5",
    // one moment of a day counts it; midnight itself is the end of the day before
    "2027-06-10T10:00, 2027-06-11T00:00, 1",
    "2027-06-10T10:00, 2027-06-11T00:00:01, 2",
    // two whole weeks: ten days and two weekends
    "2027-06-07T00:00, 2027-06-21T00:00, 13",
    // the weekends when clocks are set have 23 and 25 hours more or less, and the same two days
    "2027-03-27T10:00, 2027-03-28T18:00, 1.5",
    "2027-10-30T10:00, 2027-10-31T18:00, 1.5"
  })
  void daysAreCountedByTheCalendarOfTheHouse(String from, String to, double days) {
    assertThat(Charge.days(OSTREL, period(from, to))).isEqualTo(days);
  }

  @Test
  void theHouseOwnMidnightParts() {
    // 22:30 UTC on 10 June is 00:30 on 11 June in Vienna
    Period night = period("2027-06-11T00:30", "2027-06-11T09:00");
    assertThat(Charge.days(OSTREL, night)).isEqualTo(1);
    HouseTerms london = inZone(ZoneId.of("Europe/London"));
    assertThat(Charge.days(london, night)).isEqualTo(2);
  }

  @Test
  void halfAMinorUnitIsRoundedUp() {
    // 9.01 x 0.75 = 6.7575; 9.02 x 0.75 = 6.765
    Period saturday = period("2027-06-12T10:00", "2027-06-12T18:00");
    assertThat(Charge.minor(OSTREL, 901, saturday)).isEqualTo(676);
    assertThat(Charge.minor(OSTREL, 902, saturday)).isEqualTo(677);
  }

  private static Period period(String from, String to) {
    return new Period(
        LocalDateTime.parse(from).atZone(VIENNA).toInstant(),
        LocalDateTime.parse(to).atZone(VIENNA).toInstant());
  }

  private static HouseTerms house(String weekendDays, long minimumMinor) {
    return new HouseTerms(
        "house",
        "House",
        VIENNA,
        Currency.getInstance("EUR"),
        OpeningHours.ALWAYS,
        Duration.ZERO,
        false,
        new BigDecimal(weekendDays),
        minimumMinor,
        1);
  }

  private static HouseTerms inZone(ZoneId zone) {
    return new HouseTerms(
        "house",
        "House",
        zone,
        Currency.getInstance("EUR"),
        OpeningHours.ALWAYS,
        Duration.ZERO,
        false,
        BigDecimal.ONE,
        0,
        1);
  }
}
