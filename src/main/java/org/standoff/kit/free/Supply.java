package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
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
                  new Bundle(units, units.stream().mapToLong(Priced::chargeMinor).sum())));
    }
    bundles.replaceAll(
        (size, list) ->
            list.stream()
                .sorted(Comparator.comparingLong(Bundle::chargeMinor))
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

    /** Least charge of just so many units out of bundles alone. */
    private final long[] least = new long[most + 1];

    /** By bundle: the counts for which it is taken, beside bundles before it. */
    private final List<BitSet> taken = new ArrayList<>();

    private final long[] looseCharge = new long[loose.size() + 1];

    /** By count: how many come in bundles; −1 where it can't be done. */
    private final int[] bundled = new int[most + 1];

    Knapsack(List<Bundle> bundles) {
      this.bundles = bundles;
      Arrays.fill(least, IMPOSSIBLE);
      least[0] = 0;
      bundles.forEach(this::offer);
      for (int i = 1; i < looseCharge.length; i++) {
        looseCharge[i] = looseCharge[i - 1] + loose.get(i - 1).chargeMinor();
      }
      for (int count = 0; count <= most; count++) {
        bundled[count] = bundled(count);
      }
    }

    long charge(int count) {
      return bundled[count] < 0 ? IMPOSSIBLE : charge(count, bundled[count]);
    }

    List<Priced> units(int count) {
      int sum = bundled[count];
      List<Priced> units = new ArrayList<>(loose.subList(0, count - sum));
      for (int i = bundles.size() - 1; i >= 0; i--) {
        if (taken.get(i).get(sum)) {
          units.addAll(bundles.get(i).units());
          sum -= bundles.get(i).units().size();
        }
      }
      units.sort(Comparator.comparingLong(Priced::chargeMinor));
      return units;
    }

    private void offer(Bundle bundle) {
      BitSet better = new BitSet(most + 1);
      for (int sum = most; sum >= bundle.units().size(); sum--) {
        long with = least[sum - bundle.units().size()] + bundle.chargeMinor();
        if (with < least[sum]) {
          least[sum] = with;
          better.set(sum);
        }
      }
      taken.add(better);
    }

    private int bundled(int count) {
      int best = -1;
      for (int sum = 0; sum <= count; sum++) {
        boolean possible = count - sum < looseCharge.length && least[sum] < IMPOSSIBLE;
        if (possible && (best < 0 || charge(count, sum) < charge(count, best))) {
          best = sum;
        }
      }
      return best;
    }

    private long charge(int count, int inBundles) {
      return least[inBundles] + looseCharge[count - inBundles];
    }
  }
}
