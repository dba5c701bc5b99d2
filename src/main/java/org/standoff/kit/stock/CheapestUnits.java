package org.standoff.kit.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Which loose units and whole groups of one model make just so many units for the least charge.
 * What is quoted and what is held are both chosen here, or a hold would not be what was quoted.
 * Among equals as few units of groups as can be, because a group that stays is worth more than
 * single units that stay; then those that come first.
 */
public final class CheapestUnits<U> {

  /** More than any charge, and still far from overflow when charges are added to it. */
  public static final long IMPOSSIBLE = Long.MAX_VALUE / 256;

  private final List<U> loose;
  private final List<Bundle<U>> bundles;
  private final int most;

  /** Least charge of just so many units out of bundles alone. */
  private final long[] least;

  /** By bundle: the counts for which it is taken, beside bundles before it. */
  private final List<BitSet> taken = new ArrayList<>();

  private final long[] looseCharge;

  /** By count: how many come in bundles; −1 where it can't be done. */
  private final int[] bundled;

  /**
   * @param loose units of no group, the cheapest first
   * @param bundles groups that may leave; those that come first do so among equals
   * @param chargeMinor what a loose unit costs
   * @param most the largest count that will be asked for
   */
  public CheapestUnits(
      List<U> loose, List<Bundle<U>> bundles, ToLongFunction<U> chargeMinor, int most) {
    this.loose = List.copyOf(loose);
    this.bundles = List.copyOf(bundles);
    this.most = most;
    this.least = new long[most + 1];
    Arrays.fill(least, IMPOSSIBLE);
    least[0] = 0;
    this.bundles.forEach(this::offer);
    this.looseCharge = new long[loose.size() + 1];
    for (int i = 1; i < looseCharge.length; i++) {
      looseCharge[i] = looseCharge[i - 1] + chargeMinor.applyAsLong(loose.get(i - 1));
    }
    this.bundled = new int[most + 1];
    for (int count = 0; count <= most; count++) {
      bundled[count] = bundled(count);
    }
  }

  /** What just so many cost at least; {@link #IMPOSSIBLE} where they can't be made. */
  public long charge(int count) {
    return bundled[count] < 0 ? IMPOSSIBLE : charge(count, bundled[count]);
  }

  /** The largest count up to that which was told that can be made. */
  public int most() {
    int count = most;
    while (bundled[count] < 0) {
      count--;
    }
    return count;
  }

  /** The units that {@link #charge} counts. */
  public List<U> units(int count) {
    int sum = bundled[count];
    List<U> units = new ArrayList<>(loose.subList(0, count - sum));
    for (int i = bundles.size() - 1; i >= 0; i--) {
      if (taken.get(i).get(sum)) {
        units.addAll(bundles.get(i).units());
        sum -= bundles.get(i).size();
      }
    }
    return units;
  }

  private void offer(Bundle<U> bundle) {
    BitSet better = new BitSet(most + 1);
    for (int sum = most; sum >= bundle.size(); sum--) {
      long with = least[sum - bundle.size()] + bundle.chargeMinor();
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
