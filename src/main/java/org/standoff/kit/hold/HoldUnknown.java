package org.standoff.kit.hold;

/** There is no such hold, or it is none of the caller's business. */
public final class HoldUnknown extends HoldRefused {

  private static final long serialVersionUID = 1L;

  HoldUnknown() {
    super("There is no hold of this id among those that the token may see.");
  }
}
