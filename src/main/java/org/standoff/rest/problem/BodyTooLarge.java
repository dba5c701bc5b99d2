package org.standoff.rest.problem;

/** A body beyond the limit, found out while it was read. */
public final class BodyTooLarge extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final long limitBytes;

  public BodyTooLarge(long limitBytes) {
    super("The body may have at most " + limitBytes + " bytes.");
    this.limitBytes = limitBytes;
  }

  ToldMembers members() {
    return ToldMembers.of(ProblemMember.MAX_BODY_BYTES, limitBytes);
  }
}
