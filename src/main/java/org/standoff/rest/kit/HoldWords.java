package org.standoff.rest.kit;

/** Words that the description of several operations on holds needs. */
final class HoldWords {

  static final String HOLD = "Id of the hold";

  static final String KEY = "Idempotency-Key";
  static final String KEY_ABOUT =
      "The caller's own name for this request, new for every new wish; plain or as a quoted string."
          + " A request that comes again with it within 24 hours has the same answer and makes no"
          + " second hold. Not needed for a dry run.";

  static final String IF_MATCH_ABOUT =
      "Entity tag of the hold as it was when the step was decided on; an asterisk for whatever it is";

  static final String CONDITION =
      " Send the hold's ETag as If-Match (428 without it, 412 where the hold has changed); that of"
          + " any form of it, as JSON or text/calendar, does.";

  static final String PRIVACY =
      "A booker sees the holds of its own desk, a publisher those on units of its house, without the"
          + " lines of other houses, an admin all. To anybody else they do not exist (404).";

  private HoldWords() {}
}
