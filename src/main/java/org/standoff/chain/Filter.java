package org.standoff.chain;

import org.standoff.acoustics.HighPass;

/**
 * A high-pass filter of the chain.
 *
 * @param highPass corner and order
 * @param place where it sits
 */
public record Filter(HighPass highPass, FilterPlace place) {}
