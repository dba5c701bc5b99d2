package org.standoff.kit.hold;

/** A request with the same key is being answered at this moment. */
public final class KeyBusy extends HoldRefused {

  private static final long serialVersionUID = 1L;

  KeyBusy() {
    super("A request with this key is being answered now: ask again in a moment.");
  }
}
