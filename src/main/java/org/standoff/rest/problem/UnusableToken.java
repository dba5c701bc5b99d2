package org.standoff.rest.problem;

/** A token that is genuine and in force, and lacks what this service has to know of its bearer. */
public final class UnusableToken extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int longestSubject;

  /**
   * Its subject is missing, empty or too long.
   *
   * @param longestSubject how many characters a subject may have
   */
  public UnusableToken(int longestSubject) {
    super(
        "The token does not say whose it is: its subject is missing, or empty, or has more than %d characters."
            .formatted(longestSubject));
    this.longestSubject = longestSubject;
  }

  ToldMembers members() {
    return ToldMembers.of(ProblemMember.MAX_SUBJECT_CHARACTERS, longestSubject);
  }
}
