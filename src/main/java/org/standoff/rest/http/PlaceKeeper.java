package org.standoff.rest.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import org.jspecify.annotations.Nullable;

/** Keeps the place of a request until its worker is done, though its caller may have gone. */
public class PlaceKeeper {

  @ServerRequestFilter(preMatching = true)
  public void keep(ResteasyReactiveContainerRequestContext request) {
    ResteasyReactiveRequestContext work =
        (ResteasyReactiveRequestContext) request.getServerRequestContext();
    @Nullable Place place = Place.of(work.unwrap(RoutingContext.class));
    if (place == null) {
      return;
    }
    if (place.hold()) {
      work.registerCompletionCallback(done -> place.letGo());
    } else {
      // the caller has gone before anybody began; nobody reads this
      request.abortWith(Response.noContent().build());
    }
  }
}
