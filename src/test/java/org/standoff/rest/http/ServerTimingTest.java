package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.MultiMap;
import java.util.PrimitiveIterator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class ServerTimingTest {

  @Test
  void theTimeToTheHeadOfTheAnswerIsToldInMilliseconds() {
    assertThat(toldAfter(12_345_678, 0)).isEqualTo("total;dur=12.3");
  }

  @Test
  void theTimeInTransactionsIsToldBesideIt() {
    assertThat(toldAfter(12_345_678, 4_440_000)).isEqualTo("total;dur=12.3, database;dur=4.4");
  }

  private static String toldAfter(long totalNanos, long databaseNanos) {
    long begun = 7_000_000;
    PrimitiveIterator.OfLong clock = LongStream.of(begun, begun + totalNanos).iterator();
    MultiMap headers = MultiMap.caseInsensitiveMultiMap();
    ServerTiming.from(clock::nextLong, () -> databaseNanos, headers).handle(null);
    return headers.get("Server-Timing");
  }
}
