package org.standoff.kit.hold;

/** The key of an earlier request came with another body. */
public final class KeyReused extends HoldRefused {

  private static final long serialVersionUID = 1L;

  KeyReused() {
    super("This key came with another body before: a new wish wants a new key.");
  }
}
