package org.standoff.kit.hold;

import java.util.Optional;

/**
 * A unit that can be had for a period.
 *
 * @param id number of its row
 * @param serial its name within its house
 * @param group the matched group that it belongs to
 * @param groupSize how many units the group has that are not retired, free or not
 * @param dayRateMinor its charge for a day, in minor units of its house's currency
 * @param matchWithinDb how far its group is apart at most, where its house says
 * @param replacementMinor what its house asks for it where it does not come back, where it says
 */
record FreeUnit(
    long id,
    String serial,
    Optional<String> group,
    int groupSize,
    long dayRateMinor,
    Optional<Double> matchWithinDb,
    Optional<Long> replacementMinor) {}
