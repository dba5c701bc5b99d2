package org.standoff.kit.hold;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.UnitState;

/**
 * Holds as simple as can be: time is a row of quarters of an hour, a unit has a set of them that is
 * busy for each hold, and everything is found by trying. It knows no interval and no SQL. It does
 * not choose units, it only judges choices.
 */
final class TickModel {

  static final Duration TICK = Duration.ofMinutes(15);

  final Instant start;
  final Map<String, HouseTerms> houses = new TreeMap<>();
  final Map<String, Unit> units = new LinkedHashMap<>();
  final Map<UUID, Held> holds = new LinkedHashMap<>();

  /** The present, in ticks. */
  int now;

  TickModel(Instant start) {
    this.start = start;
  }

  /** A unit with what it is promised for. */
  static final class Unit {
    final Model model;
    final String serial;
    final long dayRateMinor;
    String group;
    String state = "available";

    Unit(Model model, String serial, long dayRateMinor, String group) {
      this.model = model;
      this.serial = serial;
      this.dayRateMinor = dayRateMinor;
      this.group = group;
    }

    /** As its house tells it. */
    KitUnit told() {
      return new KitUnit(
          serial,
          model.microphone(),
          group.isEmpty() ? null : group,
          UnitState.of(state).orElseThrow(),
          dayRateMinor,
          "",
          null,
          null);
    }
  }

  /** A unit within a hold. */
  static final class Piece {
    final Unit unit;
    final int line;
    int busyFrom;
    int busyTo;
    boolean occupies = true;
    boolean out;
    boolean in;

    Piece(Unit unit, int line, int busyFrom, int busyTo) {
      this.unit = unit;
      this.line = line;
      this.busyFrom = busyFrom;
      this.busyTo = busyTo;
    }

    /** What came back at once was busy for that moment. */
    BitSet ticks() {
      BitSet ticks = new BitSet();
      ticks.set(busyFrom, Math.max(busyTo, busyFrom + 1));
      return ticks;
    }
  }

  /** A hold. */
  static final class Held {
    final HoldWish wish;
    final int madeAt;
    final int from;
    int to;
    HoldState state;
    int expiresAt;
    final List<Piece> pieces = new ArrayList<>();

    Held(HoldWish wish, int madeAt, int from, int to) {
      this.wish = wish;
      this.madeAt = madeAt;
      this.from = from;
      this.to = to;
    }

    /** Of what nobody collected. */
    void letGo(Predicate<Piece> which) {
      pieces.stream()
          .filter(which.and(piece -> !piece.out))
          .forEach(piece -> piece.occupies = false);
    }

    /** It stays out until nothing is left to come back or to be collected. */
    void settle() {
      boolean settled = pieces.stream().noneMatch(piece -> piece.occupies && !piece.in);
      state = settled ? HoldState.RETURNED : HoldState.OUT;
    }
  }

  Instant at(int tick) {
    return start.plus(TICK.multipliedBy(tick));
  }

  Period period(int from, int to) {
    return new Period(at(from), at(to));
  }

  /** By the clock on the wall of the house, tried tick by tick. */
  boolean isOpen(HouseTerms house, int tick) {
    if (house.hours().spans().isEmpty()) {
      return true;
    }
    ZonedDateTime wall = at(tick).atZone(house.zone());
    return house.hours().spans().stream()
        .anyMatch(
            span ->
                span.day() == wall.getDayOfWeek()
                    && !wall.toLocalTime().isBefore(span.opens())
                    && !wall.toLocalTime().isAfter(span.closes()));
  }

  int nextOpening(HouseTerms house, int tick) {
    int open = tick;
    while (!isOpen(house, open)) {
      open++;
    }
    return open;
  }

  /** Whether all houses take part in a hold from then to then. */
  boolean isWelcome(List<WantedLine> lines, int from, int to) {
    return lines.stream()
        .map(line -> terms(line.house()))
        .allMatch(house -> isOpen(house, from) && takesBack(house, to));
  }

  boolean takesBack(HouseTerms house, int to) {
    return house.dropBox() || isOpen(house, to);
  }

  int busyTo(String house, int to) {
    return nextOpening(terms(house), to) + (int) terms(house).turnRound().dividedBy(TICK);
  }

  HouseTerms terms(String house) {
    return houses.get(house);
  }

  /** Whether a unit can be promised for those ticks, one hold left out. */
  boolean isFree(Unit unit, int from, int to) {
    if (!unit.state.equals("available")) {
      return false;
    }
    BitSet wanted = new BitSet();
    wanted.set(from, to);
    for (Held hold : holds.values()) {
      for (Piece piece : hold.pieces) {
        if (piece.unit == unit) {
          boolean late = piece.out && !piece.in && piece.busyTo <= now;
          if (late || piece.occupies && piece.ticks().intersects(wanted)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Rates of free units by group; those of broken groups left out; single ones under "". */
  private Map<String, List<Long>> free(Model model, int from, int busyTo) {
    Map<String, List<Long>> rates = new TreeMap<>();
    rates.put("", new ArrayList<>());
    for (Unit unit : units.values()) {
      if (unit.model.equals(model) && isFree(unit, from, busyTo)) {
        boolean whole =
            unit.group.isEmpty()
                || units.values().stream()
                    .filter(
                        other ->
                            other.model.house().equals(model.house())
                                && other.group.equals(unit.group)
                                && !other.state.equals("retired"))
                    .allMatch(other -> isFree(other, from, busyTo));
        if (whole) {
          rates.computeIfAbsent(unit.group, any -> new ArrayList<>()).add(unit.dayRateMinor);
        }
      }
    }
    return rates;
  }

  /**
   * What each line could have, in the order of the lines: matched ones are served first, the others
   * of a model share the rest of it.
   */
  List<Integer> most(List<WantedLine> lines, int from, int to) {
    Integer[] most = new Integer[lines.size()];
    for (Model shared : lines.stream().map(WantedLine::model).distinct().toList()) {
      Choice choice = new Choice(shared, from, busyTo(shared.house(), to));
      List<Integer> loose = new ArrayList<>();
      int demand = 0;
      for (int line = 0; line < most.length; line++) {
        WantedLine wanted = lines.get(line);
        if (wanted.model().equals(shared) && wanted.matched()) {
          most[line] = choice.takeGroup(wanted.quantity()) ? wanted.quantity() : 0;
        } else if (wanted.model().equals(shared)) {
          loose.add(line);
          demand += wanted.quantity();
        }
      }
      int left = demand;
      while (choice.cheapest(left) < 0) {
        left--;
      }
      for (int line : loose) {
        most[line] = Math.min(lines.get(line).quantity(), left);
        left -= most[line];
      }
    }
    return List.of(most);
  }

  /** What can be taken of a model, found by trying every set of groups. */
  private final class Choice {
    private final List<Long> singles = new ArrayList<>();
    private final List<List<Long>> groups = new ArrayList<>();
    private long takenRates;

    Choice(Model model, int from, int busyTo) {
      Map<String, List<Long>> free = free(model, from, busyTo);
      singles.addAll(free.remove(""));
      singles.sort(Comparator.naturalOrder());
      groups.addAll(free.values());
    }

    /** The cheapest of that size. */
    boolean takeGroup(int size) {
      Optional<List<Long>> cheapest =
          groups.stream()
              .filter(group -> group.size() == size)
              .min(Comparator.comparingLong(TickModel::sum));
      cheapest.ifPresent(
          group -> {
            groups.remove(group);
            takenRates += sum(group);
          });
      return cheapest.isPresent();
    }

    /** Rates of all that was taken and of just so many units more; −1 where they can't be had. */
    long cheapest(int count) {
      long best = -1;
      for (int set = 0; set < 1 << groups.size(); set++) {
        int size = 0;
        long rates = takenRates;
        for (int i = 0; i < groups.size(); i++) {
          if ((set >> i & 1) == 1) {
            size += groups.get(i).size();
            rates += sum(groups.get(i));
          }
        }
        int single = count - size;
        if (single >= 0 && single <= singles.size()) {
          rates += sum(singles.subList(0, single));
          best = best < 0 ? rates : Math.min(best, rates);
        }
      }
      return best;
    }
  }

  private static long sum(List<Long> rates) {
    return rates.stream().mapToLong(Long::longValue).sum();
  }

  boolean isPossible(List<WantedLine> lines, int from, int to) {
    List<Integer> most = most(lines, from, to);
    for (int i = 0; i < lines.size(); i++) {
      if (most.get(i) < lines.get(i).quantity()) {
        return false;
      }
    }
    return true;
  }

  /** Takes up what the service chose, if it may be chosen. */
  void take(Held hold, Hold answer) {
    for (HeldLine line : answer.lines()) {
      WantedLine wanted = line.wanted();
      if (line.units().size() != wanted.quantity()) {
        throw new AssertionError("wanted " + wanted + ", got " + line.units());
      }
      for (HeldUnit chosen : line.units()) {
        Unit unit = units.get(chosen.serial());
        int busyTo = busyTo(wanted.house(), hold.to);
        if (!unit.model.equals(wanted.model()) || !isFree(unit, hold.from, busyTo)) {
          throw new AssertionError("not to be had: " + chosen + " for " + wanted);
        }
      }
    }
    refuseDearUnits(hold, answer);
    for (HeldLine line : answer.lines()) {
      for (HeldUnit chosen : line.units()) {
        hold.pieces.add(
            new Piece(
                units.get(chosen.serial()),
                line.line(),
                hold.from,
                busyTo(line.wanted().house(), hold.to)));
      }
    }
    refuseBrokenGroups(hold);
  }

  private void refuseDearUnits(Held hold, Hold answer) {
    for (Model shared : answer.models()) {
      Choice choice = new Choice(shared, hold.from, busyTo(shared.house(), hold.to));
      int loose = 0;
      long rates = 0;
      for (HeldLine line : answer.lines()) {
        WantedLine wanted = line.wanted();
        if (wanted.model().equals(shared)) {
          if (wanted.matched()) {
            choice.takeGroup(wanted.quantity());
          } else {
            loose += wanted.quantity();
          }
          for (HeldUnit unit : line.units()) {
            rates += units.get(unit.serial()).dayRateMinor;
          }
        }
      }
      if (rates != choice.cheapest(loose)) {
        throw new AssertionError("dearer than it need be: " + answer.lines());
      }
    }
  }

  private void refuseBrokenGroups(Held hold) {
    List<Unit> theirs = hold.pieces.stream().map(piece -> piece.unit).toList();
    if (theirs.stream().distinct().count() != theirs.size()) {
      throw new AssertionError("a unit twice in one hold");
    }
    for (Unit unit : theirs) {
      boolean whole =
          unit.group.isEmpty()
              || units.values().stream()
                  .filter(
                      other ->
                          other.model.house().equals(unit.model.house())
                              && other.group.equals(unit.group)
                              && !other.state.equals("retired"))
                  .allMatch(theirs::contains);
      if (!whole) {
        throw new AssertionError("a broken group: " + unit.group);
      }
    }
  }

  /** One unit alone is matched to nothing, and no house may say so. */
  void dissolveGroupsOfOne() {
    for (Unit unit : units.values()) {
      boolean alone =
          units.values().stream()
              .noneMatch(
                  other ->
                      other != unit
                          && other.group.equals(unit.group)
                          && other.model.equals(unit.model)
                          && !other.state.equals("retired"));
      if (alone) {
        unit.group = "";
      }
    }
  }

  /** Whether a live hold has the unit, so that it can't be retired. */
  boolean isPromised(Unit unit) {
    return holds.values().stream()
        .flatMap(hold -> hold.pieces.stream())
        .anyMatch(
            piece ->
                piece.unit == unit
                    && piece.occupies
                    && (piece.busyTo > now || piece.out && !piece.in));
  }
}
