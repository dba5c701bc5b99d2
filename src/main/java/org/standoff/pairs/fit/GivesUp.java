package org.standoff.pairs.fit;

/**
 * What a solution costs.
 *
 * @param code short name, lower case with hyphens, stable for programs
 * @param figure how much, in the unit that {@code detail} says
 * @param detail one sentence for people
 */
public record GivesUp(String code, double figure, String detail) {}
