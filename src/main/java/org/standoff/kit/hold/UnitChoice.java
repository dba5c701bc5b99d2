package org.standoff.kit.hold;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which units of one model a line takes. A matched group leaves whole or not at all: a matched line
 * takes one group of just its quantity; any other takes single units first, and whole groups only
 * for what is left over.
 */
final class UnitChoice {

  private final List<FreeUnit> singles = new ArrayList<>();
  private final Map<String, List<FreeUnit>> groups = new TreeMap<>();

  /**
   * @param free units of the model that are free, in the order in which they should leave
   */
  UnitChoice(Collection<FreeUnit> free) {
    for (FreeUnit unit : free) {
      unit.group()
          .ifPresentOrElse(
              group -> groups.computeIfAbsent(group, any -> new ArrayList<>()).add(unit),
              () -> singles.add(unit));
    }
    groups.values().removeIf(members -> members.size() < members.get(0).groupSize());
  }

  /** Takes what a line wants, so that no later line gets it; nothing where it can't be met. */
  Optional<List<FreeUnit>> take(WantedLine line) {
    return line.matched() ? takeGroup(line.quantity()) : takeAny(line.quantity());
  }

  /** Most units that a line of this kind could take, up to what it wants. */
  int most(WantedLine line) {
    if (line.matched()) {
      return groups.values().stream().anyMatch(group -> group.size() == line.quantity())
          ? line.quantity()
          : 0;
    }
    for (int count = line.quantity(); count > 0; count--) {
      if (inGroups(count).isPresent()) {
        return count;
      }
    }
    return 0;
  }

  private Optional<List<FreeUnit>> takeGroup(int quantity) {
    Optional<String> fitting =
        groups.entrySet().stream()
            .filter(group -> group.getValue().size() == quantity)
            .map(Map.Entry::getKey)
            .findFirst();
    return fitting.map(groups::remove);
  }

  private Optional<List<FreeUnit>> takeAny(int quantity) {
    return inGroups(quantity)
        .map(
            names -> {
              List<FreeUnit> taken = new ArrayList<>();
              names.forEach(name -> taken.addAll(groups.remove(name)));
              List<FreeUnit> alone = singles.subList(0, quantity - taken.size());
              taken.addAll(alone);
              alone.clear();
              return taken;
            });
  }

  /**
   * The groups to take with single units so that it makes the count: those with the fewest units
   * together, because a group that stays is worth more than single units that stay.
   */
  private Optional<List<String>> inGroups(int count) {
    int least = Math.max(0, count - singles.size());
    List<String> names = List.copyOf(groups.keySet());
    // sums[i] holds what the first i groups can make
    List<BitSet> sums = new ArrayList<>();
    BitSet none = new BitSet(count + 1);
    none.set(0);
    sums.add(none);
    for (String name : names) {
      BitSet before = sums.get(sums.size() - 1);
      BitSet after = (BitSet) before.clone();
      int size = groups.getOrDefault(name, List.of()).size();
      before.stream().filter(sum -> sum + size <= count).forEach(sum -> after.set(sum + size));
      sums.add(after);
    }
    int sum = sums.get(names.size()).nextSetBit(least);
    if (sum < 0) {
      return Optional.empty();
    }
    List<String> chosen = new ArrayList<>();
    for (int i = names.size(); i > 0; i--) {
      if (!sums.get(i - 1).get(sum)) {
        chosen.add(names.get(i - 1));
        sum -= groups.getOrDefault(names.get(i - 1), List.of()).size();
      }
    }
    return Optional.of(chosen);
  }
}
