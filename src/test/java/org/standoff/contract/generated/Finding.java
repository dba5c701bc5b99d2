package org.standoff.contract.generated;

/**
 * Something that is not as the description says.
 *
 * @param kind what kind of fault it is
 * @param operation where
 * @param label what was tried there
 * @param seen what was seen
 * @param curl the same request for a shell
 */
record Finding(Kind kind, String operation, String label, String seen, String curl) {

  enum Kind {
    /** The service failed. */
    SERVER_FAULT,
    /** The status is not among those that the operation tells. */
    UNDOCUMENTED_STATUS,
    /** The media type is not among those that the status tells. */
    UNDOCUMENTED_MEDIA_TYPE,
    /** A header that the status promises is not there. */
    MISSING_HEADER,
    /** The body is not what its schema says. */
    BODY_AGAINST_SCHEMA,
    /** A refusal is no problem document. */
    NO_PROBLEM,
    /** A refusal tells a number in a text that none of its members has. */
    NUMBER_IN_WORDS_ALONE,
    /** What the schema forbids was taken. */
    INVALID_ACCEPTED,
    /** What the schema allows was refused. */
    VALID_REFUSED,
    /** An example of the description does not work. */
    EXAMPLE_REFUSED,
    /** What was made was told as if it had been there. */
    NOT_TOLD_AS_NEW,
    /** A request that is wrong as HTTP got another answer than it should. */
    WRONG_REFUSAL,
    /** A call without good credentials was served. */
    UNGUARDED,
    /** What belongs to one house was seen or changed by another. */
    LEAK,
    /** What was deleted is still there. */
    STILL_THERE,
    /** What was done already was done again. */
    DONE_TWICE,
    /** A refused request changed something. */
    LEFT_BEHIND
  }

  @Override
  public String toString() {
    return kind + " at " + operation + ", " + label + "\n    " + seen + "\n    " + curl;
  }
}
