package org.standoff.kit.free;

/**
 * Units of one model that are wanted together.
 *
 * @param microphone the catalogue item that describes them
 * @param quantity how many, 1 or more
 * @param matched whether they must be one matched group of just that many
 */
public record WantedLine(String microphone, int quantity, boolean matched) {}
