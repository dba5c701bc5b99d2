package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/** When a line is short and when it is free next, by hand and against every hour. */
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

  /** Busy periods begin and end on the hour, and so do what is asked and the turn-round. */
  @Property(seed = "811", tries = 300)
  void theNextFreePeriodAndTheShortOnesAgreeWithALookAtEveryHour(@ForAll Random random) {
    Instant begin = Instant.parse("2027-06-11T00:00:00Z");
    List<ShelfDiary.UnitDiary> units = new ArrayList<>();
    for (int i = random.nextInt(5); i >= 0; i--) {
      units.add(randomUnit(random, begin));
    }
    WantedLine line = new WantedLine("omni", 1 + random.nextInt(3), random.nextInt(4) == 0);
    Instant from = begin.plus(Duration.ofHours(random.nextInt(24)));
    Period asked = new Period(from, from.plus(Duration.ofHours(1 + random.nextInt(20))));
    Instant horizon = from.plus(Duration.ofHours(60));
    ShelfDiary diary = new ShelfDiary(ALWAYS, units);

    Optional<Period> expected = Optional.empty();
    for (int hour = 0; hour < 60 && expected.isEmpty(); hour++) {
      Instant start = from.plus(Duration.ofHours(hour));
      Period later = new Period(start, start.plus(asked.length()));
      if (isMet(units, new Period(later.from(), later.to().plus(Duration.ofHours(3))), line)) {
        expected = Optional.of(later);
      }
    }
    assertThat(diary.nextFree(line, asked, horizon)).isEqualTo(expected);

    List<Period> shortPeriods = diary.shortPeriods(line, asked);
    Period needed = new Period(asked.from(), asked.to().plus(Duration.ofHours(3)));
    for (Instant hour = begin; hour.isBefore(needed.to().plus(Duration.ofHours(3))); ) {
      Instant next = hour.plus(Duration.ofHours(1));
      boolean isShort = needed.contains(hour) && !isMet(units, new Period(hour, next), line);
      Instant at = hour;
      assertThat(shortPeriods.stream().anyMatch(part -> part.contains(at)))
          .as("%s", hour)
          .isEqualTo(isShort);
      hour = next;
    }
    for (int i = 1; i < shortPeriods.size(); i++) {
      assertThat(shortPeriods.get(i).from()).isAfter(shortPeriods.get(i - 1).to());
    }
  }

  private static boolean isMet(List<ShelfDiary.UnitDiary> units, Period needed, WantedLine line) {
    int loose = 0;
    List<Integer> groups = new ArrayList<>();
    for (String group : List.of("a", "b")) {
      List<ShelfDiary.UnitDiary> members =
          units.stream().filter(unit -> unit.group().equals(Optional.of(group))).toList();
      if (!members.isEmpty() && members.stream().allMatch(unit -> isFree(unit, needed))) {
        groups.add(members.size());
      }
    }
    for (ShelfDiary.UnitDiary unit : units) {
      loose += unit.group().isEmpty() && isFree(unit, needed) ? 1 : 0;
    }
    if (line.matched()) {
      return groups.contains(line.quantity());
    }
    // every choice of groups, filled up with single units
    for (int choice = 0; choice < 1 << groups.size(); choice++) {
      int sum = 0;
      for (int i = 0; i < groups.size(); i++) {
        sum += (choice >> i & 1) * groups.get(i);
      }
      if (sum <= line.quantity() && sum + loose >= line.quantity()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFree(ShelfDiary.UnitDiary unit, Period needed) {
    return unit.lendable()
        && unit.busy().stream()
            .allMatch(
                busy -> !busy.from().isBefore(needed.to()) || !busy.to().isAfter(needed.from()));
  }

  private static ShelfDiary.UnitDiary randomUnit(Random random, Instant begin) {
    List<Period> busy = new ArrayList<>();
    int at = random.nextInt(12);
    for (int i = random.nextInt(4); i > 0; i--) {
      int until = at + 1 + random.nextInt(12);
      busy.add(new Period(begin.plus(Duration.ofHours(at)), begin.plus(Duration.ofHours(until))));
      at = until + random.nextInt(10);
    }
    Optional<String> group =
        Optional.of(List.of("a", "b", "").get(random.nextInt(3))).filter(name -> !name.isEmpty());
    return new ShelfDiary.UnitDiary(group, random.nextInt(8) > 0, busy);
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
