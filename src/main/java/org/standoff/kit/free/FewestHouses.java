package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.List;

/**
 * The smallest sets of houses that have together all that can be had. Sets grow by a house that has
 * something of the first model that is still short; a house once tried in a place is not tried
 * there again, so no set comes twice.
 */
final class FewestHouses {

  /** Steps after which sets are grown house by house, whichever helps most. */
  private static final int MOST_STEPS = 20_000;

  /** More equally small sets than this are not compared. */
  private static final int MOST_SETS = 64;

  /**
   * What was found.
   *
   * @param sets all of the same size, at least one
   * @param exact whether no smaller set does, and no other of that size was left out
   */
  record Found(List<Integer> sets, boolean exact) {}

  private final Market market;
  private final List<Integer> sets = new ArrayList<>();
  private int steps;
  private boolean cut;

  private FewestHouses(Market market) {
    this.market = market;
  }

  /** Finds them. */
  static Found find(Market market) {
    FewestHouses search = new FewestHouses(market);
    for (int size = 0; size <= market.houses().size(); size++) {
      search.grow(0, 0, size);
      if (search.cut && search.sets.isEmpty()) {
        return new Found(List.of(search.greedy()), false);
      }
      if (!search.sets.isEmpty()) {
        return new Found(search.sets, !search.cut);
      }
    }
    throw new IllegalStateException("all houses together have all that can be had");
  }

  private void grow(int set, int excluded, int more) {
    if (++steps > MOST_STEPS || sets.size() >= MOST_SETS) {
      cut = true;
      return;
    }
    int pool = firstShort(set);
    if (pool < 0) {
      sets.add(set);
      return;
    }
    int passed = excluded;
    for (int house = 0; more > 0 && house < market.houses().size(); house++) {
      if (!Market.has(set | passed, house) && hasSome(pool, house)) {
        grow(set | 1 << house, passed, more - 1);
        passed |= 1 << house;
      }
    }
  }

  private int firstShort(int set) {
    for (int pool = 0; pool < market.pools().size(); pool++) {
      if (!market.givesAsMuch(pool, set, market.everyHouse())) {
        return pool;
      }
    }
    return -1;
  }

  private boolean hasSome(int pool, int house) {
    Lots lots = market.supply(pool, house).whole();
    return lots.looseCount() > 0 || !lots.groupSizes().isEmpty();
  }

  private int greedy() {
    int set = 0;
    while (firstShort(set) >= 0) {
      int best = -1;
      int most = -1;
      for (int house = 0; house < market.houses().size(); house++) {
        if (!Market.has(set, house) && met(set | 1 << house) > most) {
          best = house;
          most = met(set | 1 << house);
        }
      }
      set |= 1 << best;
    }
    return set;
  }

  private int met(int set) {
    int met = 0;
    for (int pool = 0; pool < market.pools().size(); pool++) {
      met += market.unitsMet(pool, set);
      for (int size : market.pools().get(pool).matchedLines().keySet()) {
        met += size * market.groupsMet(pool, size, set);
      }
    }
    return met;
  }
}
