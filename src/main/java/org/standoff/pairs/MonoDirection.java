package org.standoff.pairs;

/**
 * The mono sum for one direction.
 *
 * @param azimuthDeg in the pair's axes, positive to the left
 */
public record MonoDirection(double azimuthDeg, MonoSum sum) {}
