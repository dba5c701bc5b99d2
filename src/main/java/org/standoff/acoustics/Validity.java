package org.standoff.acoustics;

/**
 * A reason why a figure is less sure than it looks: a law used outside its range, or an assumption.
 *
 * @param code short name, lower case with hyphens, stable for programs
 * @param detail one sentence for people, with the figures
 */
public record Validity(String code, String detail) {}
