package org.standoff.rest.problem;

import java.time.Duration;

/** A body that did not come in within its time. */
public final class BodyTooSlow extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public BodyTooSlow(Duration limit) {
    super("The body must come in within " + limit.toSeconds() + " s.");
  }
}
