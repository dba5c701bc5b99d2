package org.standoff.pairs;

/**
 * The lowest dip of a mono sum.
 *
 * @param hz 1/(2|dt|) for channels of like polarity; 0 for opposite polarity, which thins the bass
 * @param depthDb sum in the dip re the sum in phase, in dB: 20 lg(|a − b|/(a + b)), ≥ {@link
 *     MonoSum#FLOOR_DB}
 */
public record Notch(double hz, double depthDb) {}
