package org.standoff.kit.hold;

import java.util.List;
import java.util.UUID;

/**
 * What came of a return.
 *
 * @param hold as it stands now
 * @param hits holds that have to wait for units which came back late
 */
public record CheckedIn(Hold hold, List<Hit> hits) {

  public CheckedIn {
    hits = List.copyOf(hits);
  }

  /**
   * A hold that a late return hits.
   *
   * @param hold its id
   * @param desk who holds
   * @param reference the desk's name for it
   * @param conflict the unit, and when that hold has it
   */
  public record Hit(UUID hold, String desk, String reference, Conflict conflict) {}
}
