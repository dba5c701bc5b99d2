package org.standoff.kit.free;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standoff.kit.Period;
import org.standoff.kit.house.Charge;
import org.standoff.kit.house.HouseTerms;

/**
 * Ways to get from several houses what is wanted: as much of it as there is, then from as few
 * houses, or for as little, as can be. Charges in different currencies are never added or compared.
 */
public final class Splits {
  private final List<WantedLine> lines;
  private final Market market;

  /**
   * @param lines what is wanted; lines of one model share what there is
   * @param houses that can lend for the period, at most 20
   * @param shelves what of it is free
   */
  public Splits(
      List<WantedLine> lines, List<HouseTerms> houses, List<Shelf> shelves, Period period) {
    this.lines = List.copyOf(lines);
    this.market = new Market(lines, houses, shelves, period);
  }

  /**
   * From as few houses as can be. Among sets of as few houses the one that charges least, where
   * they all charge in one currency; where not, the first in the order of the question.
   */
  public Split fewestHouses() {
    FewestHouses.Found found = FewestHouses.find(market);
    CheapestWay.Effort effort = new CheapestWay.Effort();
    List<Split> ways =
        found.sets().stream()
            .map(set -> split(CheapestWay.find(market, set, currencies(set).size() <= 1, effort)))
            .toList();
    int all = found.sets().stream().reduce(0, (one, other) -> one | other);
    Split best =
        currencies(all).size() <= 1
            ? Collections.min(ways, Comparator.comparingLong(Splits::total))
            : ways.get(0);
    boolean exact = found.exact() && ways.stream().allMatch(Split::exact);
    return new Split(best.parts(), best.charges(), best.unmet(), exact);
  }

  /**
   * For as little as can be, once for each currency that houses charge in, in the order in which
   * houses are asked; from houses of that currency alone.
   */
  public List<Split> cheapest() {
    Map<String, Integer> sets = new LinkedHashMap<>();
    for (int house = 0; house < market.houses().size(); house++) {
      int bit = 1 << house;
      sets.merge(
          market.houses().get(house).currency().getCurrencyCode(), bit, (set, one) -> set | one);
    }
    CheapestWay.Effort effort = new CheapestWay.Effort();
    return sets.values().stream()
        .map(set -> split(CheapestWay.find(market, set, true, effort)))
        .toList();
  }

  private static long total(Split split) {
    return split.charges().stream().mapToLong(Split.HouseCharge::chargeMinor).sum();
  }

  private List<String> currencies(int set) {
    List<String> currencies = new ArrayList<>();
    for (int house = 0; house < market.houses().size(); house++) {
      String code = market.houses().get(house).currency().getCurrencyCode();
      if (Market.has(set, house) && !currencies.contains(code)) {
        currencies.add(code);
      }
    }
    return currencies;
  }

  /** Units handed to a line from a house. */
  private record Handed(int line, int house, Supply.Priced unit) {}

  private Split split(CheapestWay.Way way) {
    List<Handed> handed = new ArrayList<>();
    for (int i = 0; i < way.stages().size(); i++) {
      CheapestWay.Stage stage = way.stages().get(i);
      if (stage.ofGroups()) {
        handGroups(stage, way.counts()[i], handed);
      } else {
        handUnits(stage, way, way.counts()[i], handed);
      }
    }
    return new Split(parts(handed), charges(handed), unmet(handed), way.exact());
  }

  private void handGroups(CheapestWay.Stage stage, int[] counts, List<Handed> handed) {
    Deque<Integer> waiting =
        new ArrayDeque<>(market.pools().get(stage.pool()).matchedLines().get(stage.groupSize()));
    for (int house = 0; house < counts.length; house++) {
      for (List<Supply.Priced> group :
          market.supply(stage.pool(), house).groups(stage.groupSize(), counts[house])) {
        int line = waiting.remove();
        for (Supply.Priced unit : group) {
          handed.add(new Handed(line, house, unit));
        }
      }
    }
  }

  private void handUnits(
      CheapestWay.Stage stage, CheapestWay.Way way, int[] counts, List<Handed> handed) {
    Deque<Integer> waiting = new ArrayDeque<>();
    for (int line : market.pools().get(stage.pool()).looseLines()) {
      for (int i = 0; i < lines.get(line).quantity(); i++) {
        waiting.add(line);
      }
    }
    for (int house = 0; house < counts.length; house++) {
      if (counts[house] > 0) {
        Map<Integer, Integer> taken = way.groupsTaken(stage.pool(), house);
        for (Supply.Priced unit : market.supply(stage.pool(), house).units(taken, counts[house])) {
          handed.add(new Handed(waiting.remove(), house, unit));
        }
      }
    }
  }

  private List<Split.Part> parts(List<Handed> handed) {
    Comparator<Handed> order =
        Comparator.comparingInt(Handed::line)
            .thenComparingInt(Handed::house)
            .thenComparingLong(one -> one.unit().dayRateMinor());
    TreeMap<Handed, Integer> counts = new TreeMap<>(order);
    handed.forEach(one -> counts.merge(one, 1, Integer::sum));
    List<Split.Part> parts = new ArrayList<>();
    counts.forEach(
        (one, count) ->
            parts.add(
                new Split.Part(
                    one.line(),
                    market.houses().get(one.house()).id(),
                    count,
                    one.unit().dayRateMinor(),
                    count * one.unit().chargeMinor())));
    return parts;
  }

  private List<Split.HouseCharge> charges(List<Handed> handed) {
    TreeMap<Integer, Long> sums = new TreeMap<>();
    handed.forEach(one -> sums.merge(one.house(), one.unit().chargeMinor(), Long::sum));
    List<Split.HouseCharge> charges = new ArrayList<>();
    sums.forEach(
        (place, sum) -> {
          HouseTerms house = market.houses().get(place);
          charges.add(
              new Split.HouseCharge(
                  house.id(),
                  house.currency().getCurrencyCode(),
                  Charge.days(house, market.period()),
                  sum,
                  house.minimumChargeMinor(),
                  Charge.whole(house, sum)));
        });
    return charges;
  }

  private List<Split.Unmet> unmet(List<Handed> handed) {
    int[] missing = lines.stream().mapToInt(WantedLine::quantity).toArray();
    handed.forEach(one -> missing[one.line()]--);
    List<Split.Unmet> unmet = new ArrayList<>();
    for (int line = 0; line < missing.length; line++) {
      if (missing[line] > 0) {
        unmet.add(new Split.Unmet(line, missing[line]));
      }
    }
    return unmet;
  }
}
