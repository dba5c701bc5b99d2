package org.standoff.kit.stock;

import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Units that leave together: a matched group that is free as a whole.
 *
 * @param <U> what a unit is to whoever chooses
 * @param units all of the group
 * @param chargeMinor what they cost together
 */
public record Bundle<U>(List<U> units, long chargeMinor) {

  public Bundle {
    units = List.copyOf(units);
  }

  public static <U> Bundle<U> of(List<U> units, ToLongFunction<U> chargeMinor) {
    return new Bundle<>(units, units.stream().mapToLong(chargeMinor).sum());
  }

  /** Units of it. */
  public int size() {
    return units.size();
  }
}
