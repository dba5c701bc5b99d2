package org.standoff.rest.http;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Lets in no more requests than can be worked on in good time. What is beyond is refused before it
 * is worked on, so that those inside keep their pace and nobody waits for nothing.
 */
@ApplicationScoped
class Admission {

  private static final int PER_PROCESSOR = 8;
  private static final int LEAST = 16;

  private final int most;
  private final AtomicInteger inside = new AtomicInteger();
  private final Counter refused;

  Admission(LimitSettings settings, MeterRegistry metrics) {
    this.most = settings.requestsAtOnce().orElse(usual(Runtime.getRuntime().availableProcessors()));
    this.refused =
        Counter.builder("standoff.requests.shed")
            .description("Requests that were told to come again, because too many were inside")
            .register(metrics);
    Gauge.builder("standoff.requests.inside", inside, AtomicInteger::get)
        .description("Requests that are worked on now")
        .register(metrics);
    Gauge.builder("standoff.requests.inside.most", () -> most)
        .description("How many requests are let in at once")
        .register(metrics);
  }

  static int usual(int processors) {
    return Math.max(LEAST, PER_PROCESSOR * processors);
  }

  int most() {
    return most;
  }

  /** Whether nobody is let in now, so that nobody has to wait to hear that. */
  boolean isFull() {
    boolean full = inside.get() >= most;
    if (full) {
      refused.increment();
    }
    return full;
  }

  /**
   * A place for one more, if there is one.
   *
   * @param whenDone what else is given back with it
   */
  Optional<Place> enter(Runnable whenDone) {
    if (inside.incrementAndGet() <= most) {
      return Optional.of(
          new Place(
              () -> {
                inside.decrementAndGet();
                whenDone.run();
              }));
    }
    inside.decrementAndGet();
    refused.increment();
    return Optional.empty();
  }
}
