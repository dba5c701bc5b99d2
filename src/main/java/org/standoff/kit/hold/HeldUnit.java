package org.standoff.kit.hold;

import java.time.Instant;
import java.util.Optional;
import org.standoff.kit.Period;

/**
 * A unit that a hold has, or had until it fell.
 *
 * @param serial its name within its house
 * @param matchedGroup the group that it belongs to
 * @param busy from collection to the end of turn-round
 * @param outAt when it was handed over
 * @param inAt when it was back
 */
public record HeldUnit(
    String serial,
    Optional<String> matchedGroup,
    Period busy,
    Optional<Instant> outAt,
    Optional<Instant> inAt) {}
