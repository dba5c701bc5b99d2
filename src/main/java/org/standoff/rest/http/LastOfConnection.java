package org.standoff.rest.http;

import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import java.util.concurrent.TimeUnit;

/**
 * Ends the connection after an answer that does not wait for the rest of its request. The server
 * below closes it only once that rest has come, which may be never.
 */
final class LastOfConnection {

  private LastOfConnection() {}

  /** To be called before the answer is sent; what still comes of the request is dropped. */
  static void mark(RoutingContext request) {
    request.response().headers().set(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
    request.request().handler(dropped -> {});
    long lingersMs = TimeUnit.SECONDS.toMillis(HeadRefusal.LINGERS_S);
    request.addEndHandler(
        answered ->
            request.vertx().setTimer(lingersMs, now -> request.request().connection().close()));
  }
}
