package org.standoff.rest.http;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * What the head of a request has to keep.
 *
 * @param within how long it may take from its first byte
 * @param requestLineBytes how long its first line may be
 * @param headersBytes how long all its headers together may be
 */
record HeadLimits(Duration within, long requestLineBytes, long headersBytes) {

  /** The first in seconds, as it is told. */
  BigDecimal withinS() {
    BigDecimal seconds = BigDecimal.valueOf(within.toMillis(), 3).stripTrailingZeros();
    return seconds.setScale(Math.max(0, seconds.scale()));
  }
}
