package org.standoff.kit.stock;

import java.util.List;

/**
 * What a published kit changes.
 *
 * @param added units that were not there
 * @param changed units that were there and are told otherwise
 * @param retired units that were there and are not told any more, or told as retired
 * @param unchanged units that stay as they were
 * @param revision counts the changes of the house's units; the same as before where nothing changed
 * @param dryRun whether it was only looked at
 */
public record PublishReport(
    Serials added,
    Serials changed,
    Serials retired,
    Serials unchanged,
    long revision,
    boolean dryRun) {

  /** How many serial numbers are named of each. */
  public static final int MOST_NAMED = 200;

  /**
   * Some units.
   *
   * @param count of them
   * @param first serial numbers, in order; at most {@link #MOST_NAMED}
   */
  public record Serials(long count, List<String> first) {
    public Serials {
      first = List.copyOf(first);
    }
  }
}
