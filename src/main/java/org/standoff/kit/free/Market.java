package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.house.Charge;
import org.standoff.kit.house.HouseTerms;

/**
 * What is wanted, pool by pool, and what each house can give towards it. Sets of houses are bits of
 * an integer, the first house being the lowest bit.
 */
final class Market {
  private final List<HouseTerms> houses;
  private final List<Pool> pools;
  private final Period period;

  /** By pool, then by house. */
  private final List<List<Supply>> supplies = new ArrayList<>();

  /** By pool, then by set of houses, as far as it was asked for. */
  private final List<Map<Integer, Integer>> unitsMet = new ArrayList<>();

  /**
   * @param lines what is wanted
   * @param houses that can lend for the period
   * @param shelves what of it is free; a house without a shelf of a model has none of it
   */
  Market(List<WantedLine> lines, List<HouseTerms> houses, List<Shelf> shelves, Period period) {
    this.houses = List.copyOf(houses);
    this.pools = Pool.of(lines);
    this.period = period;
    Map<Model, Shelf> byModel = new HashMap<>();
    shelves.forEach(shelf -> byModel.put(shelf.model(), shelf));
    for (Pool pool : pools) {
      List<Supply> ofPool = new ArrayList<>();
      for (HouseTerms house : houses) {
        Model model = new Model(house.id(), pool.microphone());
        Shelf shelf = byModel.getOrDefault(model, Shelf.empty(model));
        ofPool.add(new Supply(shelf, rate -> Charge.minor(house, rate, period), pool));
      }
      supplies.add(ofPool);
      unitsMet.add(new HashMap<>());
    }
  }

  List<HouseTerms> houses() {
    return houses;
  }

  Period period() {
    return period;
  }

  List<Pool> pools() {
    return pools;
  }

  Supply supply(int pool, int house) {
    return supplies.get(pool).get(house);
  }

  /** The set of all houses. */
  int everyHouse() {
    return (1 << houses.size()) - 1;
  }

  static boolean has(int set, int house) {
    return (set >> house & 1) == 1;
  }

  /** How many lines of a pool that want a group of a size can have one from a set of houses. */
  int groupsMet(int pool, int size, int set) {
    int there = 0;
    for (int house = 0; house < houses.size(); house++) {
      there += has(set, house) ? supply(pool, house).groupCount(size) : 0;
    }
    return Math.min(there, pools.get(pool).matchedLines().getOrDefault(size, List.of()).size());
  }

  /**
   * The most units that the other lines of a pool can have from a set of houses, when matched lines
   * have had their groups. Which of several groups of a size those had does not matter.
   */
  int unitsMet(int pool, int set) {
    return unitsMet.get(pool).computeIfAbsent(set, houseSet -> countUnits(pool, houseSet));
  }

  private int countUnits(int pool, int set) {
    Map<Integer, Integer> owed = new HashMap<>();
    pools
        .get(pool)
        .matchedLines()
        .keySet()
        .forEach(size -> owed.put(size, groupsMet(pool, size, set)));
    int loose = 0;
    List<Integer> sizes = new ArrayList<>();
    for (int house = 0; house < houses.size(); house++) {
      if (has(set, house)) {
        Lots lots = supply(pool, house).whole();
        loose += lots.looseCount();
        for (int size : lots.groupSizes()) {
          int left = owed.getOrDefault(size, 0);
          if (left > 0) {
            owed.put(size, left - 1);
          } else {
            sizes.add(size);
          }
        }
      }
    }
    return new Lots(loose, sizes).most(pools.get(pool).looseDemand());
  }

  /** Whether a set of houses can give as much towards a pool as another does. */
  boolean givesAsMuch(int pool, int set, int asSet) {
    for (int size : pools.get(pool).matchedLines().keySet()) {
      if (groupsMet(pool, size, set) < groupsMet(pool, size, asSet)) {
        return false;
      }
    }
    return unitsMet(pool, set) >= unitsMet(pool, asSet);
  }
}
