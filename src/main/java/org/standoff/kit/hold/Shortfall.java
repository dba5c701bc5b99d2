package org.standoff.kit.hold;

/**
 * A line that can't be met.
 *
 * @param line place in the wish, from 0
 * @param wanted what was wanted
 * @param freeCount most of it that could be had, after the lines before it took theirs
 */
public record Shortfall(int line, WantedLine wanted, int freeCount) {}
