package org.standoff.advice;

import org.standoff.chain.Microphone;
import org.standoff.chain.NoiseBudget;
import org.standoff.chain.Settings;

/**
 * One candidate, assessed: a microphone with its settings at the place of the question.
 *
 * @param microphone the microphone
 * @param view its pattern at that place
 * @param settings its settings
 * @param levels peaks and headrooms
 * @param noise what the noise is made of
 * @param signalToNoiseDb long-term level of the source over all noise, both in dB(A)
 * @param filterLossAtLowestDb what the filter alone costs at the lowest wanted note, in dB, ≥ 0
 */
public record Assessment(
    Microphone microphone,
    PatternView view,
    Settings settings,
    Levels levels,
    NoiseBudget noise,
    double signalToNoiseDb,
    double filterLossAtLowestDb) {}
