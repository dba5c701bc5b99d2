package org.standoff.rest.http;

import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;

/** Ends the connection after an answer that does not wait for the rest of its request. */
final class LastOfConnection {

  private LastOfConnection() {}

  static void mark(RoutingContext request) {
    // HTTP/2 forbids the header (RFC 9113, 8.2.2), and can end a stream alone
    if (request.request().version() != HttpVersion.HTTP_2) {
      request.response().headers().set(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
    }
  }
}
