package org.standoff.floor;

import java.util.Optional;

/**
 * One microphone under a delay strategy.
 *
 * @param microphoneId id of the microphone
 * @param delayMs to be put in, ≥ 0
 * @param delaySamples the same in samples, not rounded
 * @param afterPairMs how much later than the pair's mean it sounds then; negative when earlier
 * @param combWithPair of its direct sound with that of the pair's first microphone; empty for that
 *     microphone itself
 * @param lowSumDb level of those two below 355 Hz together, signs as they are
 */
public record DelayedMicrophone(
    String microphoneId,
    double delayMs,
    double delaySamples,
    double afterPairMs,
    Optional<Comb> combWithPair,
    double lowSumDb) {}
