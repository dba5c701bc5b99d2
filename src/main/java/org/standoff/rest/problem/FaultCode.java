package org.standoff.rest.problem;

/** What is wrong at one place of a request, for programs. */
public enum FaultCode {
  /** No member or parameter has this name. */
  UNKNOWN_NAME,
  /** The member or parameter must be there. */
  MISSING,
  /** A number stands where a text is wanted, an object where a list is, and so on. */
  WRONG_TYPE,
  /** The value is none of those listed. */
  UNKNOWN_VALUE,
  /** The catalogue has no item of this identifier. */
  UNKNOWN_ITEM,
  /** The number is too small or too large. */
  OUT_OF_RANGE,
  /** The text or list is too short or too long. */
  WRONG_LENGTH,
  /** The value has the right type but not the right form. */
  WRONG_FORM,
  /** The text is not well-formed JSON. */
  MALFORMED,
  /** Values that are fine alone contradict each other. */
  CONTRADICTION
}
