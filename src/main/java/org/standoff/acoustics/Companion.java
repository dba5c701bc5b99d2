package org.standoff.acoustics;

/**
 * What changes at a placement when another placement of the source is in use.
 *
 * @param purpose the purpose of the other placement that makes the difference
 * @param wantedFromHz lowest frequency wanted here while that companion carries its part, in Hz
 */
public record Companion(Purpose purpose, double wantedFromHz) {}
