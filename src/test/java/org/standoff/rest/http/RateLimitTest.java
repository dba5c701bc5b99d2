package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class RateLimitTest {

  private final AtomicReference<Instant> now = new AtomicReference<>(Instant.EPOCH);
  private final RateLimit limit =
      new RateLimit(OptionalInt.of(3), Duration.ofSeconds(60), now::get);

  @Test
  void aCallerMaySendAsManyAsTheLimitSaysAndNotOneMore() {
    assertThat(count("a").left()).isEqualTo(2);
    assertThat(count("a").left()).isEqualTo(1);
    assertThat(count("a").isUsedUp()).isFalse();
    assertThat(count("a").isUsedUp()).isTrue();
  }

  @Test
  void oneCallerUsesUpNothingOfAnother() {
    for (int i = 0; i < 10; i++) {
      count("a");
    }
    assertThat(count("b").left()).isEqualTo(2);
  }

  @Test
  void aNewWindowBeginsAnew() {
    for (int i = 0; i < 10; i++) {
      count("a");
    }
    now.set(Instant.EPOCH.plusSeconds(60));
    assertThat(count("a").left()).isEqualTo(2);
  }

  @Test
  void theWaitReachesToTheEndOfTheWindowAndAtMostATenthBeyond() {
    now.set(Instant.EPOCH.plusMillis(17_500));
    for (String caller : new String[] {"a", "b", "10.0.0.7", "::1"}) {
      assertThat(count(caller).waitS()).isBetween(43L, 49L);
    }
  }

  @Test
  void theFieldsAreThoseOfTheDraft() {
    RateLimit.Share share = new RateLimit.Share(600, 60, 599, 42);
    assertThat(share.policy()).isEqualTo("\"requests\";q=600;w=60");
    assertThat(share.state()).isEqualTo("\"requests\";r=599;t=42");
    assertThat(new RateLimit.Share(600, 60, -5, 42).state()).isEqualTo("\"requests\";r=0;t=42");
  }

  @Test
  void moreCallersThanAreRememberedShareOneCount() {
    for (int i = 0; i < RateLimit.MOST_CALLERS; i++) {
      count("caller-" + i);
    }
    assertThat(count("x").left()).isEqualTo(2);
    assertThat(count("y").left()).isEqualTo(1);
    assertThat(count("caller-7").left()).isEqualTo(1);
  }

  @Test
  void withoutALimitNothingIsCounted() {
    RateLimit none = new RateLimit(OptionalInt.empty(), Duration.ofSeconds(60), now::get);
    assertThat(none.count("a")).isEmpty();
  }

  private RateLimit.Share count(String caller) {
    return limit.count(caller).orElseThrow();
  }
}
