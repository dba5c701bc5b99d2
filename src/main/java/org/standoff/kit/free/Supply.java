package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;

/** What one house can give of one model, with what it charges for the period. */
final class Supply {

  /** More than any charge, and still far from overflow when charges are added to it. */
  static final long IMPOSSIBLE = Long.MAX_VALUE / 256;

  /**
   * One unit.
   *
   * @param dayRateMinor its charge for a day
   * @param chargeMinor its charge for the period
   */
  record Priced(long dayRateMinor, long chargeMinor) {}

  /** Units that leave together. */
  private record Bundle(List<Priced> units, long chargeMinor) {}

  private final int most;
  private final List<Priced> loose = new ArrayList<>();
  private final TreeMap<Integer, List<Bundle>> bundles = new TreeMap<>();
  private final Map<Map<Integer, Integer>, Knapsack> knapsacks = new HashMap<>();

  /**
   * @param chargeOfRate what a unit of a day's rate costs for the period
   * @param most no question to this supply asks for more units
   */
  Supply(Shelf shelf, LongUnaryOperator chargeOfRate, int most) {
    this.most = most;
    for (Shelf.Loose some : shelf.loose()) {
      Priced unit = priced(some.dayRateMinor(), chargeOfRate);
      loose.addAll(Collections.nCopies(some.count(), unit));
    }
    loose.sort(Comparator.comparingLong(Priced::chargeMinor));
    for (Shelf.Group group : shelf.groups()) {
      List<Priced> units =
          group.dayRatesMinor().stream().map(rate -> priced(rate, chargeOfRate)).toList();
      bundles
          .computeIfAbsent(group.size(), size -> new ArrayList<>())
          .add(new Bundle(units, units.stream().mapToLong(Priced::chargeMinor).sum()));
    }
    bundles.values().forEach(list -> list.sort(Comparator.comparingLong(Bundle::chargeMinor)));
  }

  private static Priced priced(long dayRateMinor, LongUnaryOperator chargeOfRate) {
    return new Priced(dayRateMinor, chargeOfRate.applyAsLong(dayRateMinor));
  }

  /** How many groups of a size there are. */
  int groupCount(int size) {
    return bundles.getOrDefault(size, List.of()).size();
  }

  /** All that is there, but for some groups that are given to matched lines. */
  Lots lots(Map<Integer, Integer> groupsTaken) {
    List<Integer> sizes = new ArrayList<>();
    bundles.forEach(
        (size, list) ->
            sizes.addAll(
                Collections.nCopies(list.size() - groupsTaken.getOrDefault(size, 0), size)));
    return new Lots(loose.size(), sizes);
  }

  /** What the cheapest so many groups of a size cost; {@link #IMPOSSIBLE} beyond what is there. */
  long groupsCharge(int size, int count) {
    List<Bundle> list = bundles.getOrDefault(size, List.of());
    return count > list.size()
        ? IMPOSSIBLE
        : list.stream().limit(count).mapToLong(Bundle::chargeMinor).sum();
  }

  /** The units of the cheapest so many groups of a size, group by group. */
  List<List<Priced>> groups(int size, int count) {
    return bundles.getOrDefault(size, List.of()).stream().limit(count).map(Bundle::units).toList();
  }

  /**
   * What just so many units cost at least, where the cheapest groups of some sizes are taken
   * already; {@link #IMPOSSIBLE} where they can't be made of what is left.
   */
  long unitsCharge(Map<Integer, Integer> groupsTaken, int count) {
    return knapsack(groupsTaken).charge(count);
  }

  /** The units that {@link #unitsCharge} counts. */
  List<Priced> units(Map<Integer, Integer> groupsTaken, int count) {
    return knapsack(groupsTaken).units(count);
  }

  private Knapsack knapsack(Map<Integer, Integer> groupsTaken) {
    return knapsacks.computeIfAbsent(Map.copyOf(groupsTaken), taken -> new Knapsack(left(taken)));
  }

  private List<Bundle> left(Map<Integer, Integer> taken) {
    List<Bundle> left = new ArrayList<>();
    bundles.forEach(
        (size, list) -> left.addAll(list.subList(taken.getOrDefault(size, 0), list.size())));
    return left;
  }

  /** Which bundles and loose units make just so many units for the least charge. */
  private final class Knapsack {
    private final List<Bundle> bundles;

    /** Least charge of just so many units out of the first so many bundles. */
    private final long[][] least;

    private final long[] looseCharge;

    Knapsack(List<Bundle> bundles) {
      this.bundles = bundles;
      this.least = new long[bundles.size() + 1][most + 1];
      Arrays.fill(least[0], IMPOSSIBLE);
      least[0][0] = 0;
      for (int i = 0; i < bundles.size(); i++) {
        Bundle bundle = bundles.get(i);
        int size = bundle.units().size();
        for (int sum = 0; sum <= most; sum++) {
          long without = least[i][sum];
          long with = sum < size ? IMPOSSIBLE : least[i][sum - size] + bundle.chargeMinor();
          least[i + 1][sum] = Math.min(without, with);
        }
      }
      this.looseCharge = new long[Math.min(loose.size(), most) + 1];
      for (int i = 1; i < looseCharge.length; i++) {
        looseCharge[i] = looseCharge[i - 1] + loose.get(i - 1).chargeMinor();
      }
    }

    long charge(int count) {
      int bundled = bundled(count);
      return bundled < 0 ? IMPOSSIBLE : all(bundled) + looseCharge[count - bundled];
    }

    List<Priced> units(int count) {
      int bundled = bundled(count);
      List<Priced> units = new ArrayList<>(loose.subList(0, count - bundled));
      int sum = bundled;
      for (int i = bundles.size(); i > 0; i--) {
        if (least[i][sum] != least[i - 1][sum]) {
          units.addAll(bundles.get(i - 1).units());
          sum -= bundles.get(i - 1).units().size();
        }
      }
      units.sort(Comparator.comparingLong(Priced::chargeMinor));
      return units;
    }

    /** How many of so many units come in bundles; −1 where it can't be done. */
    private int bundled(int count) {
      int best = -1;
      for (int sum = 0; sum <= count; sum++) {
        boolean possible = count - sum < looseCharge.length && all(sum) < IMPOSSIBLE;
        if (possible
            && (best < 0
                || all(sum) + looseCharge[count - sum] < all(best) + looseCharge[count - best])) {
          best = sum;
        }
      }
      return best;
    }

    private long all(int sum) {
      return least[bundles.size()][sum];
    }
  }
}
