package org.standoff.rest.problem;

import java.time.Duration;

/** A body that did not come in within its time. */
public final class BodyTooSlow extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final Duration limit;

  public BodyTooSlow(Duration limit) {
    super("The body must come in within " + Seconds.of(limit).toPlainString() + " s.");
    this.limit = limit;
  }

  ToldMembers members() {
    return ToldMembers.of(ProblemMember.BODY_WITHIN_S, Seconds.of(limit));
  }
}
