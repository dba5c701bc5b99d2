package org.standoff.rest.security;

import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Closes reading and calculating to those without a token, where the setting {@link #SETTING} says
 * so. What explains the service stays open.
 */
public class ReadersMustBeKnown {

  /** Whether it is so. */
  public static final String SETTING = "standoff.tokens.needed-to-read";

  private static final String CLOSED = "/v1/";

  private final boolean needed;
  private final CurrentCaller caller;

  ReadersMustBeKnown(@ConfigProperty(name = SETTING) boolean needed, CurrentCaller caller) {
    this.needed = needed;
    this.caller = caller;
  }

  @ServerRequestFilter
  public void check(UriInfo uri) {
    if (needed && uri.getPath().startsWith(CLOSED)) {
      caller.get();
    }
  }
}
