package org.standoff.kit.hold;

import java.util.List;

/** Units of a hold that others have in the time that it wants on top. */
public final class UnitsTaken extends HoldRefused {

  private static final long serialVersionUID = 1L;

  private final transient List<Conflict> conflicts;

  UnitsTaken(String message, List<Conflict> conflicts) {
    super(message);
    this.conflicts = List.copyOf(conflicts);
  }

  /** Which units, and when others have them. */
  public List<Conflict> conflicts() {
    return conflicts;
  }
}
