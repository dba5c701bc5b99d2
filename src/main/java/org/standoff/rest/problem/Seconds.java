package org.standoff.rest.problem;

import java.math.BigDecimal;
import java.time.Duration;

/** Seconds as they are told: to the millisecond, without noughts at the end. */
public final class Seconds {

  private Seconds() {}

  public static BigDecimal of(Duration duration) {
    BigDecimal seconds = BigDecimal.valueOf(duration.toMillis(), 3).stripTrailingZeros();
    return seconds.setScale(Math.max(0, seconds.scale()));
  }
}
