package org.standoff.advice;

import java.util.OptionalDouble;

/**
 * What would give the headroom that is missing.
 *
 * @param cure {@code farther}, {@code in-line-pad}, {@code another-microphone}, {@code
 *     another-preamp}, {@code softer}
 * @param distanceM distance that leaves the wanted headroom, in m, for {@code farther}
 * @param missingDb what is missing, in dB
 * @param needed what is needed, in words with its figure
 */
public record Cure(String cure, OptionalDouble distanceM, double missingDb, String needed) {}
