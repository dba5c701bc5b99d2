package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.MultiMap;
import java.util.PrimitiveIterator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class ServerTimingTest {

  @Test
  void theTimeToTheHeadOfTheAnswerIsToldInMilliseconds() {
    PrimitiveIterator.OfLong clock = LongStream.of(7_000_000, 19_345_678).iterator();
    MultiMap headers = MultiMap.caseInsensitiveMultiMap();
    ServerTiming.from(clock::nextLong, () -> 0, headers).handle(null);
    assertThat(headers.get("Server-Timing")).isEqualTo("total;dur=12.3");
  }

  @Test
  void theTimeInTransactionsIsToldBesideIt() {
    PrimitiveIterator.OfLong clock = LongStream.of(7_000_000, 19_345_678).iterator();
    MultiMap headers = MultiMap.caseInsensitiveMultiMap();
    ServerTiming.from(clock::nextLong, () -> 4_440_000, headers).handle(null);
    assertThat(headers.get("Server-Timing")).isEqualTo("total;dur=12.3, database;dur=4.4");
  }
}
