package org.standoff.kit.stock;

import java.util.Optional;

/**
 * Which units are wanted.
 *
 * @param microphone of this catalogue item only
 * @param state in this state only; where left out, all but the retired
 */
public record UnitFilter(Optional<String> microphone, Optional<UnitState> state) {}
