package org.standoff.kit.hold;

import java.time.Instant;
import java.util.Optional;

/**
 * A line that can't be met.
 *
 * @param line place in the wish, from 0
 * @param wanted what was wanted
 * @param freeCount most of it that could be had, after the lines before it took theirs
 * @param freeFrom the first later collection from which it is free for as long as wanted, if the
 *     house has as many at all
 */
public record Shortfall(int line, WantedLine wanted, int freeCount, Optional<Instant> freeFrom) {}
