package org.standoff.chain;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;

/**
 * The figures of one pattern of one output.
 *
 * @param name what the switch says; the coefficient decides the arithmetic
 * @param polar first-order pattern at mid frequencies
 * @param omniPartPerOctave the coefficient per octave, where known
 * @param sensitivityMvPerPa open-circuit sensitivity at 1 kHz, in mV/Pa (IEC 60268-4)
 * @param selfNoiseDba equivalent noise level, in dB(A); absent for passive microphones
 */
public record PatternFigures(
    PatternName name,
    Polar polar,
    Optional<Octaves> omniPartPerOctave,
    double sensitivityMvPerPa,
    OptionalDouble selfNoiseDba) {}
