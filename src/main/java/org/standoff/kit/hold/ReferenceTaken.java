package org.standoff.kit.hold;

import java.util.UUID;

/** The desk has a hold of this reference already. */
public final class ReferenceTaken extends HoldRefused {

  private static final long serialVersionUID = 1L;

  private final String reference;
  private final UUID hold;

  ReferenceTaken(String reference, UUID hold) {
    super("This desk has a hold '" + reference + "' already.");
    this.reference = reference;
    this.hold = hold;
  }

  public String reference() {
    return reference;
  }

  /** The hold that has it. */
  public UUID hold() {
    return hold;
  }
}
