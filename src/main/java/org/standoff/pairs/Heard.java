package org.standoff.pairs;

/**
 * One sound in one channel.
 *
 * @param channel left, right or centre
 * @param amplitude signed, re an omnidirectional capsule in the middle of the pair; exact, so 0 in
 *     a null
 * @param levelDb the same in dB, with the pattern's rejection capped; always finite
 * @param leadMs how much earlier than in the middle of the pair the sound arrives
 * @param pathM length of the way from the source; 0 for a plane wave
 * @param inverted true when a rear lobe turns the polarity over
 * @param rejectionCapped true when the cap, not the pattern, gave the level
 * @param shadowed true when the sound comes over the edge of a disc
 */
public record Heard(
    Channel channel,
    double amplitude,
    double levelDb,
    double leadMs,
    double pathM,
    boolean inverted,
    boolean rejectionCapped,
    boolean shadowed) {}
