package org.standoff.kit.hold;

import java.time.Duration;
import java.util.List;
import org.standoff.kit.Period;

/**
 * What a desk wants to hold, all or none of it.
 *
 * @param reference the desk's own name for it; no two holds of a desk have the same
 * @param period from collection to return
 * @param lines at least one
 * @param lifetime how long it stands unconfirmed once it has its units; whole minutes
 * @param second whether it may wait in line where units are short
 */
public record HoldWish(
    String reference, Period period, List<WantedLine> lines, Duration lifetime, boolean second) {

  /** Nobody lends for longer in one go; it bounds what a wrong year can block. */
  public static final Duration LONGEST = Duration.ofDays(366);

  /** How long a hold stands unconfirmed where its desk names no time. */
  public static final Duration USUAL_LIFETIME = Duration.ofDays(2);

  public HoldWish {
    lines = List.copyOf(lines);
  }
}
