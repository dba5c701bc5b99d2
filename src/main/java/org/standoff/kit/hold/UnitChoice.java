package org.standoff.kit.hold;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import org.standoff.kit.stock.Bundle;
import org.standoff.kit.stock.CheapestUnits;

/**
 * Which units of one model the lines of a hold take. A matched group leaves whole or not at all: a
 * matched line takes the cheapest group of just its quantity; the others together take what costs
 * least of the rest, so that a group may leave for two of them.
 */
final class UnitChoice {

  private final LongUnaryOperator chargeOfRate;
  private final Map<Long, Long> charges = new HashMap<>();
  private final List<FreeUnit> singles = new ArrayList<>();
  private final List<Bundle<FreeUnit>> groups;

  /**
   * @param free units of the model that are free, in the order in which they should leave among
   *     equals
   * @param chargeOfRate what a unit of a day's rate costs for the period
   */
  UnitChoice(Collection<FreeUnit> free, LongUnaryOperator chargeOfRate) {
    this.chargeOfRate = chargeOfRate;
    Map<String, List<FreeUnit>> members = new TreeMap<>();
    for (FreeUnit unit : free) {
      unit.group()
          .ifPresentOrElse(
              group -> members.computeIfAbsent(group, any -> new ArrayList<>()).add(unit),
              () -> singles.add(unit));
    }
    this.groups =
        new ArrayList<>(
            members.values().stream()
                .filter(group -> group.size() == group.get(0).groupSize())
                .map(group -> Bundle.of(group, this::charge))
                .sorted(
                    Comparator.<Bundle<FreeUnit>>comparingInt(Bundle::size)
                        .thenComparingLong(Bundle::chargeMinor))
                .toList());
  }

  /**
   * Units for lines of the model.
   *
   * @return for each line its units, or the most that it could have, which for a matched one is
   *     none; a line before another is served first
   */
  List<List<FreeUnit>> serve(List<WantedLine> lines) {
    List<List<FreeUnit>> served = new ArrayList<>(Collections.nCopies(lines.size(), List.of()));
    int demand = 0;
    // matched lines first, or another line might take their group
    for (int line = 0; line < lines.size(); line++) {
      WantedLine wanted = lines.get(line);
      if (wanted.matched()) {
        served.set(line, takeGroup(wanted.quantity()));
      } else {
        demand += wanted.quantity();
      }
    }
    Iterator<FreeUnit> chosen = cheapest(demand).iterator();
    for (int line = 0; line < lines.size(); line++) {
      WantedLine wanted = lines.get(line);
      if (!wanted.matched()) {
        List<FreeUnit> units = new ArrayList<>();
        while (units.size() < wanted.quantity() && chosen.hasNext()) {
          units.add(chosen.next());
        }
        served.set(line, units);
      }
    }
    return served;
  }

  private long charge(FreeUnit unit) {
    return charges.computeIfAbsent(unit.dayRateMinor(), chargeOfRate::applyAsLong);
  }

  private List<FreeUnit> takeGroup(int quantity) {
    Optional<Bundle<FreeUnit>> fitting =
        groups.stream().filter(group -> group.size() == quantity).findFirst();
    fitting.ifPresent(groups::remove);
    return fitting.map(Bundle::units).orElse(List.of());
  }

  /** As many units as there are up to a count, groups whole, for the least charge. */
  private List<FreeUnit> cheapest(int count) {
    Map<Integer, Integer> bySize = new HashMap<>();
    // more groups of a size can't be wanted, and a house may have thousands
    List<Bundle<FreeUnit>> enough =
        groups.stream()
            .filter(group -> bySize.merge(group.size(), 1, Integer::sum) <= count / group.size())
            .toList();
    CheapestUnits<FreeUnit> units = new CheapestUnits<>(singles, enough, this::charge, count);
    return units.units(units.most()).stream()
        .sorted(Comparator.comparingLong(this::charge))
        .toList();
  }
}
