package org.standoff.rest.http;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Counts what each caller asks in a window of time, and tells it in the fields of
 * draft-ietf-httpapi-ratelimit-headers-11. Callers are known by their {@linkplain CallerNetwork
 * network}, so that a refused token uses up nobody else's share.
 */
@ApplicationScoped
class RateLimit {

  /** Beyond, newcomers share one count: memory has an end, addresses have none. */
  static final int MOST_CALLERS = 50_000;

  /** The name of the only policy. */
  static final String POLICY = "requests";

  private static final String QUOTED = '"' + POLICY + '"';
  private static final String THE_REST = "";

  /** Everybody's window ends at a moment of its own, or all would return at once. */
  private static final int SPREAD = 10;

  private record Window(long number, Map<String, AtomicInteger> asked) {}

  private final OptionalInt most;
  private final Duration length;
  private final InstantSource clock;
  private volatile Window window = new Window(-1, Map.of());

  @Inject
  RateLimit(LimitSettings settings) {
    this(settings.rate().requests(), settings.rate().window(), InstantSource.system());
  }

  RateLimit(OptionalInt most, Duration length, InstantSource clock) {
    this.most = most;
    this.length = length;
    this.clock = clock;
  }

  /**
   * How a caller stands.
   *
   * @param most how many requests it may send in a window
   * @param windowS length of the window, in seconds
   * @param left how many more it may send; negative where this one is too many
   * @param waitS when it may send as many again, in seconds
   */
  record Share(int most, long windowS, int left, long waitS) {

    boolean isUsedUp() {
      return left < 0;
    }

    /** Value of {@code RateLimit-Policy}. */
    String policy() {
      return QUOTED + ";q=" + most + ";w=" + windowS;
    }

    /** Value of {@code RateLimit}. */
    String state() {
      return QUOTED + ";r=" + Math.max(0, left) + ";t=" + waitS;
    }
  }

  /** Counts one request; empty where there is no limit. */
  Optional<Share> count(String caller) {
    if (most.isEmpty()) {
      return Optional.empty();
    }
    long nowMs = clock.millis();
    long lengthMs = length.toMillis();
    Map<String, AtomicInteger> asked = now(nowMs / lengthMs).asked();
    String key = asked.size() < MOST_CALLERS || asked.containsKey(caller) ? caller : THE_REST;
    int count = asked.computeIfAbsent(key, first -> new AtomicInteger()).incrementAndGet();
    long toTheEndS = (lengthMs - nowMs % lengthMs + 999) / 1000;
    long spreadS = Math.floorMod(caller.hashCode(), Math.max(1, length.toSeconds() / SPREAD));
    return Optional.of(
        new Share(
            most.getAsInt(), length.toSeconds(), most.getAsInt() - count, toTheEndS + spreadS));
  }

  private Window now(long number) {
    Window seen = window;
    if (seen.number() == number) {
      return seen;
    }
    synchronized (this) {
      if (window.number() != number) {
        window = new Window(number, new ConcurrentHashMap<>());
      }
      return window;
    }
  }
}
