package org.standoff.rest.http;

import io.netty.buffer.ByteBufInputStream;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import org.jspecify.annotations.Nullable;

/** Hands the body that {@link BodyIntake} took in to the resource, without a copy. */
public class ArrivedBody {

  private static final String KEY = ArrivedBody.class.getName();

  static void keep(RoutingContext request, Buffer body) {
    request.put(KEY, body);
  }

  @ServerRequestFilter(preMatching = true)
  public void hand(ResteasyReactiveContainerRequestContext request) {
    ResteasyReactiveRequestContext work =
        (ResteasyReactiveRequestContext) request.getServerRequestContext();
    @Nullable Buffer body = work.unwrap(RoutingContext.class).get(KEY);
    if (body != null) {
      work.setInputStream(new ByteBufInputStream(body.getByteBuf()));
    }
  }
}
