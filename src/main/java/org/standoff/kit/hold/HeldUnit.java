package org.standoff.kit.hold;

import java.time.Instant;
import java.util.Optional;
import org.standoff.kit.Period;

/**
 * A unit that a hold has, or had until it fell.
 *
 * @param serial its name within its house
 * @param matchedGroup the group that it belongs to
 * @param dayRateMinor its charge for a day when it was promised, in minor units of its house's
 *     currency
 * @param matchWithinDb how far its group is apart at most, where its house says
 * @param replacementMinor what its house asked for it, where it does not come back, when it was
 *     promised, if it said
 * @param occupies whether it is held or was collected; not where it was given up before that
 * @param lentTo when it should come back
 * @param busy from collection to the end of turn-round
 * @param outAt when it was handed over
 * @param inAt when it was back
 */
public record HeldUnit(
    String serial,
    Optional<String> matchedGroup,
    long dayRateMinor,
    Optional<Double> matchWithinDb,
    Optional<Long> replacementMinor,
    boolean occupies,
    Instant lentTo,
    Period busy,
    Optional<Instant> outAt,
    Optional<Instant> inAt) {}
