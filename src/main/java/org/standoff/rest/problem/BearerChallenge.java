package org.standoff.rest.problem;

/** What {@code WWW-Authenticate} says to whoever may not go on (RFC 6750, 3). */
final class BearerChallenge {

  private static final String REALM = "Bearer realm=\"standoff\"";

  private BearerChallenge() {}

  /** No token came, so nothing is said of any. */
  static String plain() {
    return REALM;
  }

  /**
   * A token came that is expired, forged, malformed or somebody else's.
   *
   * @param reason in ASCII without quotes and backslashes
   */
  static String invalidToken(String reason) {
    return REALM + ", error=\"invalid_token\", error_description=\"" + reason + "\"";
  }

  /** The token is good but does not reach so far. */
  static String insufficientScope() {
    return REALM + ", error=\"insufficient_scope\"";
  }
}
