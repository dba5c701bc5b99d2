package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/** When a line is short and when it is free next, by hand. */
class ShelfDiaryTest {
  private static final HouseTerms OSTREL =
      house("mon,tue,wed,thu,fri,sat", "08:00-17:30", Duration.ofHours(4), false);
  private static final HouseTerms VENNICK =
      house("tue,wed,thu,fri,sat", "09:00-16:00", Duration.ofHours(24), true);
  private static final HouseTerms ALWAYS = house("", "", Duration.ofHours(3), false);

  /** Friday 10:00 to Monday 11:00 in Vienna. */
  private static final Period SESSION = period("2027-06-11T08:00:00Z", "2027-06-14T09:00:00Z");

  private static final WantedLine A_PAIR = new WantedLine("omni", 2, true);

  @Test
  void theMatchedOmnisAreShortUntilSaturdayAfternoonAndFreeFromThenOn() {
    // back on Saturday at 10:00 and turned round at 14:00; 73 hours later it is Tuesday, 15:00
    ShelfDiary diary = new ShelfDiary(OSTREL, pair("2027-06-10T08:00:00Z", "2027-06-12T12:00:00Z"));
    assertThat(diary.shortPeriods(A_PAIR, SESSION))
        .containsExactly(period("2027-06-11T08:00:00Z", "2027-06-12T12:00:00Z"));
    assertThat(diary.nextFree(A_PAIR, SESSION, SESSION.from().plus(FreeKit.HORIZON)))
        .contains(period("2027-06-12T12:00:00Z", "2027-06-15T13:00:00Z"));
  }

  @Test
  void unmatchedUnitsAreNeverAPair() {
    ShelfDiary diary =
        new ShelfDiary(VENNICK, List.of(unit(Optional.empty()), unit(Optional.empty())));
    // wanted until the drop-box is emptied on Tuesday at 9:00, and 24 hours of turn-round
    assertThat(diary.shortPeriods(A_PAIR, SESSION))
        .containsExactly(period("2027-06-11T08:00:00Z", "2027-06-16T07:00:00Z"));
    assertThat(diary.nextFree(A_PAIR, SESSION, SESSION.from().plus(FreeKit.HORIZON))).isEmpty();
  }

  @Test
  void aPeriodThatWouldEndOnASundayIsMovedUntilTheDoorIsOpen() {
    // free again on Wednesday at 12:00; for 96 hours: until Sunday, when nobody takes it back,
    // so it begins when it can end on Monday at 8:00: on Thursday at 8:00
    ShelfDiary diary = new ShelfDiary(OSTREL, pair("2027-06-14T06:00:00Z", "2027-06-16T10:00:00Z"));
    Period asked = period("2027-06-14T06:00:00Z", "2027-06-18T06:00:00Z");
    assertThat(diary.nextFree(A_PAIR, asked, asked.from().plus(FreeKit.HORIZON)))
        .contains(period("2027-06-17T06:00:00Z", "2027-06-21T06:00:00Z"));
  }

  @Test
  void enoughUnitsAtEveryMomentAreNotEnoughWhereNoneStaysThroughout() {
    ShelfDiary diary =
        new ShelfDiary(
            ALWAYS,
            List.of(
                unit(Optional.empty(), period("2027-06-10T08:00:00Z", "2027-06-12T08:00:00Z")),
                unit(Optional.empty(), period("2027-06-12T08:00:00Z", "2027-06-20T08:00:00Z"))));
    WantedLine one = new WantedLine("omni", 1, false);
    assertThat(diary.shortPeriods(one, SESSION)).isEmpty();
    // the first comes back on Saturday and stays
    assertThat(diary.nextFree(one, SESSION, SESSION.from().plus(FreeKit.HORIZON)))
        .contains(period("2027-06-12T08:00:00Z", "2027-06-15T09:00:00Z"));
  }

  @Test
  void aHireMayEndSoThatTheTurnRoundEndsWhenTheNextBegins() {
    // three hours of turn-round before 12:00; a hire of one hour fits into 8:00 to 12:00 just so
    ShelfDiary diary =
        new ShelfDiary(
            ALWAYS,
            List.of(
                unit(
                    Optional.empty(),
                    period("2027-06-11T06:00:00Z", "2027-06-11T08:00:00Z"),
                    period("2027-06-11T12:00:00Z", "2027-06-30T08:00:00Z"))));
    WantedLine one = new WantedLine("omni", 1, false);
    Period hour = period("2027-06-11T07:00:00Z", "2027-06-11T08:00:00Z");
    Period longer = new Period(hour.from(), hour.to().plusNanos(1000));
    Instant horizon = hour.from().plus(Duration.ofDays(10));
    assertThat(diary.nextFree(one, hour, horizon))
        .contains(period("2027-06-11T08:00:00Z", "2027-06-11T09:00:00Z"));
    assertThat(diary.nextFree(one, longer, horizon)).isEmpty();
  }

  @Test
  void whatIsInRepairIsFreeAtNoTime() {
    ShelfDiary diary =
        new ShelfDiary(
            ALWAYS, List.of(new ShelfDiary.UnitDiary(Optional.empty(), false, List.of())));
    WantedLine one = new WantedLine("omni", 1, false);
    assertThat(diary.shortPeriods(one, SESSION)).hasSize(1);
    assertThat(diary.nextFree(one, SESSION, SESSION.from().plus(FreeKit.HORIZON))).isEmpty();
  }

  private static List<ShelfDiary.UnitDiary> pair(String from, String to) {
    return List.of(
        unit(Optional.of("pair"), period(from, to)), unit(Optional.of("pair"), period(from, to)));
  }

  private static ShelfDiary.UnitDiary unit(Optional<String> group, Period... busy) {
    return new ShelfDiary.UnitDiary(group, true, List.of(busy));
  }

  private static Period period(String from, String to) {
    return new Period(Instant.parse(from), Instant.parse(to));
  }

  private static HouseTerms house(String days, String hours, Duration turnRound, boolean dropBox) {
    String week =
        days.isEmpty() ? "" : String.join(" " + hours + ", ", days.split(",")) + " " + hours;
    return new HouseTerms(
        "house",
        "House",
        ZoneId.of("Europe/Vienna"),
        Currency.getInstance("EUR"),
        OpeningHours.parse(week),
        turnRound,
        dropBox,
        BigDecimal.ONE,
        0,
        1);
  }
}
