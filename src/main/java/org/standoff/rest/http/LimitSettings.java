package org.standoff.rest.http;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;
import java.util.OptionalInt;

/** How much the service takes on at once, and from one caller. */
@ConfigMapping(prefix = "standoff.limits")
public interface LimitSettings {

  /**
   * How many requests below /v1 are worked on at once; one more is told to come again (503). Eight
   * for each processor, at least sixteen, where it is not set.
   */
  OptionalInt requestsAtOnce();

  /**
   * How long the head of a request may take to come in, from its first byte (HTTP/1); the
   * connection is closed then (408).
   */
  @WithDefault("10s")
  Duration headWithin();

  /**
   * How long a body may take to come in, from when the head of its request is whole (408). A pause
   * counts like any other time.
   */
  @WithDefault("60s")
  Duration bodyWithin();

  /** How much one caller, known by its network, may ask. */
  Rate rate();

  /** A number of requests in a window of time. */
  interface Rate {

    /**
     * How many requests below /v1 a caller, which is an IPv4 address or an IPv6 network of 64 bits,
     * may send in a window; one more is refused (429). Where it is set, every answer tells how many
     * are left. No limit where it is not set. Behind a proxy all callers are one, but for {@code
     * quarkus.http.proxy.proxy-address-forwarding}.
     */
    OptionalInt requests();

    /** The window that the requests are counted in. */
    @WithDefault("60s")
    Duration window();
  }
}
