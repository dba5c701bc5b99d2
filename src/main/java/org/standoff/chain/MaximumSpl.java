package org.standoff.chain;

import java.util.OptionalDouble;
import org.standoff.acoustics.RmsSpl;

/**
 * The level that a microphone bears.
 *
 * @param level rms level of the sine at which the stated distortion is reached, pad out
 * @param thdPercent that distortion, in per cent; absent where the sheet does not say
 * @param spreadDb half of the 5..95 % range of the figure, in dB; 0 where it is taken as exact
 * @param basis what the figure rests on
 */
public record MaximumSpl(RmsSpl level, OptionalDouble thdPercent, double spreadDb, Basis basis) {}
