package org.standoff.kit.hold;

import java.util.List;

/**
 * A line of a hold with its units.
 *
 * @param line place in the hold, from 0
 * @param wanted what was wanted
 * @param units what was promised for it; none while the hold waits
 */
public record HeldLine(int line, WantedLine wanted, List<HeldUnit> units) {

  public HeldLine {
    units = List.copyOf(units);
  }
}
