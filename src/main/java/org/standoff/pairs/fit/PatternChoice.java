package org.standoff.pairs.fit;

import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;

/**
 * A pattern that a microphone can be set to.
 *
 * @param name what the switch says
 * @param polar what it means
 */
public record PatternChoice(PatternName name, Polar polar) {}
