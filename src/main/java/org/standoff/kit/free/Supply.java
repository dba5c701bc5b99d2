package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import org.standoff.kit.stock.Bundle;
import org.standoff.kit.stock.CheapestUnits;

/** What one house can give of one model, with what it charges for the period. */
final class Supply {

  /** What can't be had costs this. */
  static final long IMPOSSIBLE = CheapestUnits.IMPOSSIBLE;

  /**
   * One unit.
   *
   * @param dayRateMinor its charge for a day
   * @param chargeMinor its charge for the period
   */
  record Priced(long dayRateMinor, long chargeMinor) {}

  private final int most;
  private final List<Priced> loose = new ArrayList<>();
  private final TreeMap<Integer, List<Bundle<Priced>>> bundles = new TreeMap<>();
  private final Map<Map<Integer, Integer>, CheapestUnits<Priced>> chosen = new HashMap<>();
  private final Lots whole;

  /**
   * Keeps of a shelf what could be wanted of it, the cheapest first: a shelf may be far larger.
   *
   * @param chargeOfRate what a unit of a day's rate costs for the period
   * @param pool what is wanted of the model
   */
  Supply(Shelf shelf, LongUnaryOperator chargeOfRate, Pool pool) {
    this.most = pool.looseDemand();
    for (Shelf.Loose some : shelf.loose()) {
      int count = Math.min(some.count(), most - loose.size());
      loose.addAll(Collections.nCopies(count, priced(some.dayRateMinor(), chargeOfRate)));
    }
    for (Shelf.Group group : shelf.groups()) {
      List<Priced> units =
          group.dayRatesMinor().stream().map(rate -> priced(rate, chargeOfRate)).toList();
      bundles
          .computeIfAbsent(group.size(), size -> new ArrayList<>())
          .addAll(
              Collections.nCopies(
                  Math.min(group.count(), wanted(pool, group.size())),
                  Bundle.of(units, Priced::chargeMinor)));
    }
    bundles.replaceAll(
        (size, list) ->
            list.stream()
                .sorted(Comparator.comparingLong(Bundle<Priced>::chargeMinor))
                .limit(wanted(pool, size))
                .toList());
    this.whole = lots(Map.of());
  }

  /** More groups of a size than these are wanted by nobody. */
  private static int wanted(Pool pool, int size) {
    return pool.matchedLines().getOrDefault(size, List.of()).size() + pool.looseDemand() / size;
  }

  private static Priced priced(long dayRateMinor, LongUnaryOperator chargeOfRate) {
    return new Priced(dayRateMinor, chargeOfRate.applyAsLong(dayRateMinor));
  }

  /** How many groups of a size there are. */
  int groupCount(int size) {
    return bundles.getOrDefault(size, List.of()).size();
  }

  /** All that is there. */
  Lots whole() {
    return whole;
  }

  private Lots lots(Map<Integer, Integer> groupsTaken) {
    List<Integer> sizes = new ArrayList<>();
    bundles.forEach(
        (size, list) ->
            sizes.addAll(
                Collections.nCopies(list.size() - groupsTaken.getOrDefault(size, 0), size)));
    return new Lots(loose.size(), sizes);
  }

  /** What the cheapest so many groups of a size cost; {@link #IMPOSSIBLE} beyond what is there. */
  long groupsCharge(int size, int count) {
    List<Bundle<Priced>> list = bundles.getOrDefault(size, List.of());
    return count > list.size()
        ? IMPOSSIBLE
        : list.stream().limit(count).mapToLong(Bundle<Priced>::chargeMinor).sum();
  }

  /** The units of the cheapest so many groups of a size, group by group. */
  List<List<Priced>> groups(int size, int count) {
    return bundles.getOrDefault(size, List.of()).stream()
        .limit(count)
        .map(Bundle<Priced>::units)
        .toList();
  }

  /**
   * What just so many units cost at least, where the cheapest groups of some sizes are taken
   * already; {@link #IMPOSSIBLE} where they can't be made of what is left.
   */
  long unitsCharge(Map<Integer, Integer> groupsTaken, int count) {
    return cheapest(groupsTaken).charge(count);
  }

  /** The units that {@link #unitsCharge} counts. */
  List<Priced> units(Map<Integer, Integer> groupsTaken, int count) {
    return cheapest(groupsTaken).units(count).stream()
        .sorted(Comparator.comparingLong(Priced::chargeMinor))
        .toList();
  }

  private CheapestUnits<Priced> cheapest(Map<Integer, Integer> groupsTaken) {
    return chosen.computeIfAbsent(
        Map.copyOf(groupsTaken),
        taken -> new CheapestUnits<>(loose, left(taken), Priced::chargeMinor, most));
  }

  private List<Bundle<Priced>> left(Map<Integer, Integer> taken) {
    List<Bundle<Priced>> left = new ArrayList<>();
    bundles.forEach(
        (size, list) -> left.addAll(list.subList(taken.getOrDefault(size, 0), list.size())));
    return left;
  }
}
