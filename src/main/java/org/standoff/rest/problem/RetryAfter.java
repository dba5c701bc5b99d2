package org.standoff.rest.problem;

/** When to ask again, by what stands in the way now. */
public enum RetryAfter {
  /** Others are being answered, which takes moments. */
  OTHERS_ARE_ANSWERED(1),
  /** Something is down; whoever mends it, or has it mended, needs some seconds. */
  SOMETHING_IS_MENDED(5);

  private final long seconds;

  RetryAfter(long seconds) {
    this.seconds = seconds;
  }

  public long seconds() {
    return seconds;
  }

  public ToldMembers told() {
    return ToldMembers.of(ProblemMember.RETRY_AFTER_S, seconds);
  }
}
