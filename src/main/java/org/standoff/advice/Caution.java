package org.standoff.advice;

/**
 * A caution. It tells usual practice and defers to local rules and licensed people; it never calls
 * anything safe or compliant.
 *
 * @param code stable code
 * @param severity {@code high}, {@code medium} or {@code low}
 * @param appliesTo what it is about: an id, or {@code line}, {@code place}
 * @param what the danger
 * @param why where it comes from, with its figures
 * @param usualPractice what is usually done
 * @param deferTo whose word counts
 */
public record Caution(
    String code,
    String severity,
    String appliesTo,
    String what,
    String why,
    String usualPractice,
    String deferTo) {}
