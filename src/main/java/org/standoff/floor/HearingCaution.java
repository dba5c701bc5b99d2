package org.standoff.floor;

/**
 * A caution about hearing. It tells usual practice and defers to local rules; it never calls
 * anything safe.
 *
 * @param code stable code
 * @param severity {@code high}, {@code medium} or {@code low}
 * @param appliesTo id of the seat, or {@code session}
 * @param what the danger, with its figures
 * @param usualPractice what is usually done
 * @param deferTo whose word counts
 */
public record HearingCaution(
    String code,
    String severity,
    String appliesTo,
    String what,
    String usualPractice,
    String deferTo) {}
