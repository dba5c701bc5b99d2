package org.standoff.rest.problem;

import java.util.Locale;

/**
 * What a problem, or one of its faults, tells in a member of its own besides the usual ones. No
 * number and no moment stands in a text alone, where a program would have to pick it out.
 */
public enum ProblemMember {
  RETRY_AFTER_S(Form.INTEGER, "After how many seconds to ask again, as 'Retry-After' says too"),
  MAX_REQUEST_LINE_BYTES(
      Form.INTEGER, "How many bytes the first line of a request, which has the address, may have"),
  MAX_HEADERS_BYTES(Form.INTEGER, "How many bytes all headers of a request together may have"),
  HEAD_WITHIN_S(
      Form.NUMBER, "Within how many seconds of its first byte the head of a request must be whole"),
  MAX_BODY_BYTES(Form.INTEGER, "How many bytes such a body may have"),
  BODY_WITHIN_S(Form.NUMBER, "Within how many seconds a body must come in"),
  MAX_CONCURRENT_REQUESTS(Form.INTEGER, "How many requests are worked on at once"),
  LIMIT_REQUESTS(Form.INTEGER, "How many requests one caller may send in a window of time"),
  WINDOW_S(Form.INTEGER, "How many seconds that window lasts"),
  VIOLATED_POLICIES(
      Form.TEXTS, "Which policies of 'RateLimit-Policy' refuse this, by the names they have there"),
  MAX_SUBJECT_CHARACTERS(
      Form.INTEGER, "How many characters the subject of a token, the name of its bearer, may have"),
  CURRENT_ETAG(Form.TEXT, "The present 'ETag', with its quotes, where there is one"),
  FAULT_COUNT(Form.INTEGER, "How many faults 'errors' tells, where there are several"),
  SHORTFALL_COUNT(Form.INTEGER, "How many lines 'shortfalls' tells"),

  MINIMUM(Form.NUMBER, "The least that is allowed, of the value in its own unit or of its length"),
  EXCLUSIVE_MINIMUM(Form.NUMBER, "What the value has to be above, in its own unit"),
  MAXIMUM(Form.NUMBER, "The most that is allowed, of the value in its own unit or of its length"),
  EXCLUSIVE_MAXIMUM(Form.NUMBER, "What the value has to be below, in its own unit"),
  MAX_LEVELS(Form.INTEGER, "How many levels deep a body may be"),
  MAX_TEXT_CHARACTERS(Form.INTEGER, "How many characters one text of a body may have"),
  MAX_NUMBER_CHARACTERS(Form.INTEGER, "How many characters one number of a body may have"),
  HOLD(Form.TEXT, "The hold that stands in the way"),
  UNTIL(Form.MOMENT, "Until when it does, turn-round counted");

  /** How a member is written in JSON. */
  public enum Form {
    INTEGER,
    NUMBER,
    TEXT,
    TEXTS,
    MOMENT
  }

  private final Form form;
  private final String meaning;

  ProblemMember(Form form, String meaning) {
    this.form = form;
    this.meaning = meaning;
  }

  /** The name in JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public Form form() {
    return form;
  }

  public String meaning() {
    return meaning;
  }

  /** Whether it belongs to one entry of {@code errors}, and not to the problem as a whole. */
  public boolean isOfOneFault() {
    return compareTo(MINIMUM) >= 0;
  }
}
