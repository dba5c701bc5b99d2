package org.standoff.rest.http;

import io.vertx.core.Handler;
import io.vertx.core.MultiMap;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * Tells in {@code Server-Timing} (W3C) how long the service had a request until it answered, and
 * how much of that was in transactions.
 */
final class ServerTiming {

  static final String HEADER = "Server-Timing";

  private static final double NANOS_PER_MS = 1e6;

  private ServerTiming() {}

  /**
   * Counts from now; what it gives is to be called when the head of the answer is written.
   *
   * @param databaseNanos how much was in transactions by then, 0 where the database was not asked
   */
  static Handler<Void> from(LongSupplier nanoTime, LongSupplier databaseNanos, MultiMap headers) {
    long begun = nanoTime.getAsLong();
    return headIsWritten ->
        headers.set(HEADER, value(nanoTime.getAsLong() - begun, databaseNanos.getAsLong()));
  }

  private static String value(long totalNanos, long databaseNanos) {
    String total = metric("total", totalNanos);
    return databaseNanos == 0 ? total : total + ", " + metric("database", databaseNanos);
  }

  private static String metric(String name, long nanos) {
    return String.format(Locale.ROOT, "%s;dur=%.1f", name, nanos / NANOS_PER_MS);
  }
}
