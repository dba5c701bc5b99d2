package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Units that leave one by one, and matched groups, which leave whole or not at all.
 *
 * @param looseCount units that belong to no group
 * @param groupSizes sizes of the groups
 */
public record Lots(int looseCount, List<Integer> groupSizes) {

  public Lots {
    groupSizes = List.copyOf(groupSizes);
  }

  /** Whether the line can be met to the last unit, with no unit that nobody asked for. */
  public boolean meet(WantedLine line) {
    return meet(List.of(line));
  }

  /** Whether lines, all of this model, can be met together. */
  public boolean meet(List<WantedLine> lines) {
    List<Integer> left = new ArrayList<>(groupSizes);
    int unmatched = 0;
    for (WantedLine line : lines) {
      if (!line.matched()) {
        unmatched += line.quantity();
      } else if (!left.remove((Integer) line.quantity())) {
        return false;
      }
    }
    return new Lots(looseCount, left).most(unmatched) == unmatched;
  }

  /** The most units that can leave without exceeding the quantity, groups whole. */
  int most(int quantity) {
    if (looseCount >= quantity) {
      return quantity;
    }
    BitSet reached = new BitSet(quantity + 1);
    reached.set(0, looseCount + 1);
    for (int size : groupSizes) {
      for (int sum = quantity - size; sum >= 0; sum--) {
        if (reached.get(sum)) {
          reached.set(sum + size);
        }
      }
    }
    return reached.length() - 1;
  }
}
