package org.standoff.rest.security;

import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Closes reading and calculating to those without a token, where the setting {@code
 * standoff.tokens.needed-to-read} says so. What explains the service stays open.
 */
public class ReadersMustBeKnown {

  private static final String CLOSED = "/v1/";

  private final boolean needed;
  private final CurrentCaller caller;

  ReadersMustBeKnown(
      @ConfigProperty(name = "standoff.tokens.needed-to-read") boolean needed,
      CurrentCaller caller) {
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
