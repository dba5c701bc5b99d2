package org.standoff.kit;

import java.util.OptionalLong;

/**
 * What a change supposes about the thing that it changes. It is asked in the transaction of the
 * change, once the row is locked, so that no other change comes between.
 */
@FunctionalInterface
public interface Precondition {

  /**
   * Returns if the change may go on, and throws what tells the caller why not.
   *
   * @param revision of the thing as it is now; empty if it does not exist
   */
  void check(OptionalLong revision);
}
