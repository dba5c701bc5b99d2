package org.standoff.kit.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * In 2027 the clocks of Europe/Vienna go forward on 28 March at 02:00 (01:00 UTC) and back on 31
 * October at 03:00 (01:00 UTC): last Sundays, directive 2000/84/EC. Instants are written in UTC.
 */
class OpeningHoursTest {
  private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
  private static final OpeningHours WORKSHOP =
      OpeningHours.parse(
          "tue 09:00-16:00, wed 09:00-16:00, thu 09:00-16:00, fri 09:00-16:00, sat 09:00-16:00");

  @Test
  void theDoorOpensAtOpeningTimeAndIsStillOpenAtClosingTime() {
    assertThat(open(WORKSHOP, "2027-06-11T08:59:59")).isFalse();
    assertThat(open(WORKSHOP, "2027-06-11T09:00")).isTrue();
    assertThat(open(WORKSHOP, "2027-06-11T16:00")).isTrue();
    assertThat(open(WORKSHOP, "2027-06-11T16:00:01")).isFalse();
  }

  @Test
  void whatComesBackOnAClosedMondayIsTakenInOnTuesday() {
    Instant monday = local("2027-06-14T11:00");
    assertThat(isOpen(WORKSHOP, monday)).isFalse();
    assertThat(WORKSHOP.nextOpening(monday, VIENNA)).isEqualTo(local("2027-06-15T09:00"));
  }

  @Test
  void anOpenDoorIsItsOwnNextOpening() {
    Instant friday = local("2027-06-11T10:00");
    assertThat(WORKSHOP.nextOpening(friday, VIENNA)).isEqualTo(friday);
  }

  @Test
  void theSameWallClockIsTwoHoursFromUtcInSummerAndOneInWinter() {
    OpeningHours sunday = OpeningHours.parse("sun 09:00-12:00");
    assertThat(sunday.nextOpening(Instant.parse("2027-03-27T12:00:00Z"), VIENNA))
        .isEqualTo("2027-03-28T07:00:00Z");
    assertThat(sunday.nextOpening(Instant.parse("2027-03-20T12:00:00Z"), VIENNA))
        .isEqualTo("2027-03-21T08:00:00Z");
    assertThat(sunday.nextOpening(Instant.parse("2027-10-30T12:00:00Z"), VIENNA))
        .isEqualTo("2027-10-31T08:00:00Z");
  }

  @ParameterizedTest
  @CsvSource({
    // the hour from 02:00 to 03:00 does not exist: 01:59:59 is followed by 03:00:00
    "sun 02:30-06:00, 2027-03-28T00:59:59Z, false",
    "sun 02:30-06:00, 2027-03-28T01:00:00Z, true",
    "sun 02:30-06:00, 2027-03-28T04:00:00Z, true",
    "sun 02:30-06:00, 2027-03-28T04:00:01Z, false",
    "sun 00:00-02:30, 2027-03-28T01:00:00Z, true",
    "sun 00:00-02:30, 2027-03-28T01:00:01Z, false",
    // the hour from 02:00 to 03:00 comes twice: 00:30 UTC is the first 02:30, 01:30 UTC the second
    "sun 02:30-06:00, 2027-10-31T00:29:59Z, false",
    "sun 02:30-06:00, 2027-10-31T00:30:00Z, true",
    "sun 02:30-06:00, 2027-10-31T01:15:00Z, true",
    "sun 00:00-02:30, 2027-10-31T01:15:00Z, true",
    "sun 00:00-02:30, 2027-10-31T01:30:00Z, true",
    "sun 00:00-02:30, 2027-10-31T01:30:01Z, false"
  })
  void theNightWhenClocksAreSetLeavesNoDoorInDoubt(String hours, Instant moment, boolean open) {
    assertThat(isOpen(OpeningHours.parse(hours), moment)).isEqualTo(open);
  }

  @Test
  void hoursThatFallWholeIntoTheJumpOpenTheWeekAfter() {
    OpeningHours night = OpeningHours.parse("sun 02:10-02:50");
    assertThat(night.nextOpening(Instant.parse("2027-03-27T12:00:00Z"), VIENNA))
        .isEqualTo("2027-04-04T00:10:00Z");
  }

  @Test
  void hoursUntilMidnightAndFromMidnightMeet() {
    OpeningHours late = OpeningHours.parse("sat 20:00-24:00, sun 00:00-02:00");
    assertThat(open(late, "2027-06-12T23:59:59")).isTrue();
    assertThat(open(late, "2027-06-13T00:00")).isTrue();
    assertThat(open(late, "2027-06-13T02:00:01")).isFalse();
    assertThat(late).hasToString("sat 20:00-24:00, sun 00:00-02:00");
  }

  @Test
  void aHouseThatTellsNoHoursIsOpenAtAllTimes() {
    Instant moment = local("2027-06-13T03:00");
    assertThat(isOpen(OpeningHours.ALWAYS, moment)).isTrue();
    assertThat(OpeningHours.parse("")).isEqualTo(OpeningHours.ALWAYS);
  }

  @Test
  void aDayThatAZoneLeftOutIsPassedOver() {
    // Samoa crossed the date line: 30 December 2011, a Friday, did not take place there (tzdb)
    OpeningHours friday = OpeningHours.parse("fri 09:00-17:00");
    ZoneId apia = ZoneId.of("Pacific/Apia");
    Instant thursday = LocalDateTime.parse("2011-12-29T18:00").atZone(apia).toInstant();
    assertThat(friday.nextOpening(thursday, apia))
        .isEqualTo(LocalDateTime.parse("2012-01-06T09:00").atZone(apia).toInstant());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mon 09:00-09:00", "mon 17:00-09:00", "new 09:00-10:00", "mon 9-10"})
  void whatIsNoStretchOfADayIsRefused(String text) {
    assertThatThrownBy(() -> OpeningHours.parse(text)).isInstanceOf(RuntimeException.class);
  }

  @Test
  void spansStandInTheOrderOfTheWeekHoweverTheyWereTold() {
    assertThat(OpeningHours.parse("sat 09:00-12:00, mon 13:00-17:00, mon 08:00-12:00"))
        .hasToString("mon 08:00-12:00, mon 13:00-17:00, sat 09:00-12:00");
    assertThat(new OpeningHours.Span(DayOfWeek.MONDAY, LocalTime.NOON, LocalTime.MIDNIGHT))
        .hasToString("mon 12:00-24:00");
  }

  private static boolean open(OpeningHours hours, String wallClock) {
    return isOpen(hours, local(wallClock));
  }

  private static boolean isOpen(OpeningHours hours, Instant moment) {
    return hours.nextOpening(moment, VIENNA).equals(moment);
  }

  private static Instant local(String wallClock) {
    return LocalDateTime.parse(wallClock).atZone(VIENNA).toInstant();
  }
}
