package org.standoff.kit;

/** Somebody known asks for what is not theirs to do. */
public final class NotPermitted extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * @param detail what is not permitted, in a sentence for the caller
   */
  public NotPermitted(String detail) {
    super(detail);
  }
}
