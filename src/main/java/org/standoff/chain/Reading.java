package org.standoff.chain;

import org.standoff.acoustics.PeakSpl;

/**
 * One peak followed through the chain. All dBu are those of the sine that has the peak.
 *
 * @param peak the peak of the pressure at the capsule
 * @param riseAtElectronicsDb what pattern and response add ahead of the electronics, in dB
 * @param riseAtInputDb the same at the preamp's input, behind the microphone's filter, in dB
 * @param riseAtOutputDb the same behind the preamp's filter, in dB
 * @param microphoneOutputDbu open-circuit output of the microphone, behind its pad and filter
 * @param loadingDb what the input's impedance takes off, in dB, ≤ 0; 0 where it is not known
 * @param preampInputDbu level at the preamp's input stage
 * @param gain the gain
 * @param peakDbfs where the peak arrives
 * @param headrooms of each stage, at this peak
 */
public record Reading(
    PeakSpl peak,
    double riseAtElectronicsDb,
    double riseAtInputDb,
    double riseAtOutputDb,
    double microphoneOutputDbu,
    double loadingDb,
    double preampInputDbu,
    Gain gain,
    double peakDbfs,
    Headrooms headrooms) {}
