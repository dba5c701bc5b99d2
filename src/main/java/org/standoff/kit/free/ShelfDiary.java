package org.standoff.kit.free;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.standoff.kit.Period;
import org.standoff.kit.hold.Handover;
import org.standoff.kit.house.HouseTerms;

/**
 * When the units of one model in one house are busy, from some moment to the horizon: enough to say
 * when a line is short and when it can be met next.
 */
final class ShelfDiary {

  /** The next moment that the database can tell from this one. */
  private static final Duration GRAIN = Duration.of(1, ChronoUnit.MICROS);

  /** Periods that are looked at unit by unit before the next free one is given up. */
  private static final int MOST_TRIED = 200;

  /** How often a period is moved to suit the door before it is given up. */
  private static final int MOST_MOVES = 60;

  /**
   * One unit.
   *
   * @param group the matched group that it belongs to
   * @param lendable false in repair, or with a desk that should have brought it back
   * @param busy by their beginning; they don't overlap
   */
  record UnitDiary(Optional<String> group, boolean lendable, List<Period> busy) {
    UnitDiary {
      busy = List.copyOf(busy);
    }

    boolean isFree(Period period) {
      return lendable && busy.stream().noneMatch(period::overlaps);
    }
  }

  private final HouseTerms house;
  private final Handover handover;
  private final List<UnitDiary> units;

  ShelfDiary(HouseTerms house, List<UnitDiary> units) {
    this.house = house;
    this.handover = new Handover(house);
    this.units = units;
  }

  /**
   * The parts of the period, and of what a unit is busy after it, in which too few units are there
   * at once. None where the line is short only because no unit stays throughout.
   */
  List<Period> shortPeriods(WantedLine line, Period asked) {
    Period needed = handover.busy(asked);
    List<Sweep.Track> tracks =
        units.stream().map(unit -> new Sweep.Track(unit.group(), gaps(unit, needed))).toList();
    return Sweep.where(needed, tracks, lots -> !lots.meet(line));
  }

  /**
   * The next period of the same length, from the asked one on, in which the same units are free
   * throughout and at whose ends the house can hand out and take back.
   *
   * @param horizon how far ahead it may begin; the diary reaches as much farther as it lasts
   */
  Optional<Period> nextFree(WantedLine line, Period asked, Instant horizon) {
    Period span = new Period(asked.from(), horizon);
    List<Period> perhaps = stretchesOfStarts(line, asked, span);
    TreeSet<Instant> starts = new TreeSet<>(List.of(asked.from()));
    units.forEach(unit -> unit.busy().forEach(busy -> starts.add(busy.to())));
    return starts.tailSet(asked.from()).stream()
        .flatMap(freed -> atOpenDoor(freed, asked.length()).stream())
        .filter(found -> perhaps.stream().anyMatch(part -> part.contains(found.from())))
        .limit(MOST_TRIED)
        .filter(found -> isMet(line, handover.busy(found)))
        .findFirst();
  }

  /** The first period from a moment on at whose ends the door lets kit through. */
  private Optional<Period> atOpenDoor(Instant from, Duration length) {
    Instant start = from;
    for (int moves = 0; moves < MOST_MOVES; moves++) {
      Instant open = handover.opening(start);
      Optional<Instant> takesBack = handover.refusesReturn(open.plus(length));
      if (takesBack.isEmpty()) {
        return Optional.of(new Period(open, open.plus(length)));
      }
      start = takesBack.get().minus(length);
    }
    return Optional.empty();
  }

  private boolean isMet(WantedLine line, Period needed) {
    List<Sweep.Track> tracks =
        units.stream()
            .map(
                unit ->
                    new Sweep.Track(
                        unit.group(), unit.isFree(needed) ? List.of(needed) : List.of()))
            .toList();
    return !Sweep.where(needed, tracks, lots -> lots.meet(line)).isEmpty();
  }

  /** Moments from which enough units are free for as long, the door left aside. */
  private List<Period> stretchesOfStarts(WantedLine line, Period asked, Period span) {
    Duration needed = asked.length().plus(house.turnRound());
    List<Sweep.Track> starts =
        units.stream()
            .map(unit -> new Sweep.Track(unit.group(), starts(unit, span, needed)))
            .toList();
    return Sweep.where(span, starts, lots -> lots.meet(line));
  }

  /** Moments from which a unit is free for so long; the last moment of a gap belongs to them. */
  private static List<Period> starts(UnitDiary unit, Period span, Duration needed) {
    List<Period> starts = new ArrayList<>();
    for (Period gap : gaps(unit, new Period(span.from(), span.to().plus(needed)))) {
      Instant last = gap.to().minus(needed).plus(GRAIN);
      if (last.isAfter(gap.from())) {
        starts.add(new Period(gap.from(), last));
      }
    }
    return starts;
  }

  private static List<Period> gaps(UnitDiary unit, Period span) {
    List<Period> gaps = new ArrayList<>();
    if (!unit.lendable()) {
      return gaps;
    }
    Instant free = span.from();
    for (Period busy : unit.busy()) {
      if (busy.from().isAfter(free) && free.isBefore(span.to())) {
        gaps.add(new Period(free, busy.from().isBefore(span.to()) ? busy.from() : span.to()));
      }
      free = busy.to().isAfter(free) ? busy.to() : free;
    }
    if (free.isBefore(span.to())) {
      gaps.add(new Period(free, span.to()));
    }
    return gaps;
  }
}
