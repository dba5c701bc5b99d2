package org.standoff.floor;

/**
 * One microphone in an alignment.
 *
 * @param microphoneId id of the microphone
 * @param pathM from the source's reference point to the capsule
 * @param arrivalMs after which its direct sound arrives
 * @param arrivalSamples the same in samples, not rounded
 * @param afterFirstMs later than the first to be reached
 * @param afterFirstSamples the same in samples, not rounded
 * @param driftSamples by how many samples its arrival shortens from the coldest to the warmest
 * @param levelDb direct sound at the fader
 * @param polarity against the first
 * @param comb of its direct sound with the first's, in a mono sum; of the first with nothing
 * @param putBack how exactly to put it back
 */
public record AlignedMicrophone(
    String microphoneId,
    double pathM,
    double arrivalMs,
    double arrivalSamples,
    double afterFirstMs,
    double afterFirstSamples,
    double driftSamples,
    double levelDb,
    PolarityAdvice polarity,
    Comb comb,
    PutBack putBack) {}
