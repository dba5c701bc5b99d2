package org.standoff.rest.http;

import io.vertx.core.Handler;
import io.vertx.core.MultiMap;
import java.util.Locale;
import java.util.function.LongSupplier;

/** Tells in {@code Server-Timing} (W3C) how long the service had a request until it answered. */
final class ServerTiming {

  static final String HEADER = "Server-Timing";

  private static final double NANOS_PER_MS = 1e6;

  private ServerTiming() {}

  /** Counts from now; what it gives is to be called when the head of the answer is written. */
  static Handler<Void> from(LongSupplier nanoTime, MultiMap headers) {
    long begun = nanoTime.getAsLong();
    return headIsWritten ->
        headers.set(HEADER, value((nanoTime.getAsLong() - begun) / NANOS_PER_MS));
  }

  private static String value(double ms) {
    return String.format(Locale.ROOT, "total;dur=%.1f", ms);
  }
}
