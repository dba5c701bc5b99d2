package org.standoff.answers;

import java.util.Optional;

/**
 * Something that keeps a well-formed question from being answered.
 *
 * @param pointer where in the question, as a JSON pointer (RFC 6901)
 * @param kind what is wrong
 * @param detail what is wrong and what to do, for people
 * @param found what stood there
 * @param allowed what may stand there
 * @param suggestion a near miss that was perhaps meant
 */
public record QuestionFault(
    String pointer,
    Kind kind,
    String detail,
    Optional<String> found,
    Optional<String> allowed,
    Optional<String> suggestion) {

  /** What can be wrong with a well-formed question. */
  public enum Kind {
    UNKNOWN_ITEM,
    UNKNOWN_VALUE,
    MISSING,
    WRONG_TYPE,
    WRONG_FORM,
    OUT_OF_RANGE,
    CONTRADICTION
  }

  public static QuestionFault of(String pointer, Kind kind, String detail) {
    return new QuestionFault(
        pointer, kind, detail, Optional.empty(), Optional.empty(), Optional.empty());
  }

  public QuestionFault found(Object value) {
    return new QuestionFault(
        pointer, kind, detail, Optional.of(String.valueOf(value)), allowed, suggestion);
  }

  public QuestionFault allowed(String values) {
    return new QuestionFault(pointer, kind, detail, found, Optional.of(values), suggestion);
  }

  public QuestionFault suggestion(Optional<String> nearMiss) {
    return new QuestionFault(pointer, kind, detail, found, allowed, nearMiss);
  }
}
