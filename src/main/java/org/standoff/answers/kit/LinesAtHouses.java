package org.standoff.answers.kit;

import java.util.List;

/**
 * What houses have of lines, each line as if it were the only one.
 *
 * @param houses on which terms each house would lend
 * @param lines line by line, what each house has
 */
public record LinesAtHouses(
    List<AvailabilityAnswer.HouseAsked> houses, List<AvailabilityAnswer.LineFound> lines) {}
