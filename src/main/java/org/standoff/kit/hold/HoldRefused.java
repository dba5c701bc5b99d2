package org.standoff.kit.hold;

/**
 * A change of holds that can't be made. Each kind carries what a caller needs to ask for something
 * that can.
 */
public abstract class HoldRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  HoldRefused(String message) {
    super(message);
  }
}
