package org.standoff.kit;

import java.time.Duration;
import java.time.Instant;

/**
 * A stretch of time, half-open: {@code from} belongs to it, {@code to} does not, so that one which
 * ends when another begins does not touch it.
 *
 * @param from when it begins
 * @param to when it is over; later than {@code from}
 */
public record Period(Instant from, Instant to) {

  /**
   * @throws IllegalArgumentException where it would be empty or run backwards
   */
  public Period {
    if (!from.isBefore(to)) {
      throw new IllegalArgumentException("a period begins before it ends");
    }
  }

  /** How long it lasts. */
  public Duration length() {
    return Duration.between(from, to);
  }

  /** Whether the two have a moment in common. */
  public boolean overlaps(Period other) {
    return from.isBefore(other.to) && other.from.isBefore(to);
  }

  /** Whether that moment belongs to it. */
  public boolean contains(Instant moment) {
    return !moment.isBefore(from) && moment.isBefore(to);
  }
}
