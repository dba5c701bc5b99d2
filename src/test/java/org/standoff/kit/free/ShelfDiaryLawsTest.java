package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

class ShelfDiaryLawsTest {
  private static final HouseTerms ALWAYS =
      new HouseTerms(
          "house",
          "House",
          ZoneOffset.UTC,
          Currency.getInstance("EUR"),
          OpeningHours.ALWAYS,
          Duration.ofHours(3),
          false,
          BigDecimal.ONE,
          0,
          1);

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
}
