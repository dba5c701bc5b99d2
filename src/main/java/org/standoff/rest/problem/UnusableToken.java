package org.standoff.rest.problem;

/** A token that is genuine and in force, and lacks what this service has to know of its bearer. */
public final class UnusableToken extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * @param reason a sentence in ASCII that tells nothing of the token's text
   */
  public UnusableToken(String reason) {
    super(reason);
  }
}
