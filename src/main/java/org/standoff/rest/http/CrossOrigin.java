package org.standoff.rest.http;

import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Tells a browser whether a page of another origin may read the answer (Fetch, CORS protocol). A
 * request of an origin that is not allowed is answered as any other, but the browser keeps the
 * answer from the page.
 */
@ApplicationScoped
class CrossOrigin {

  private static final String ANY = "*";
  private static final int NO_CONTENT = 204;
  private static final String KEPT_S = "600";
  private static final String METHODS = "GET, HEAD, POST, PUT, DELETE";
  private static final String SENT =
      "Accept, Authorization, Content-Type, Idempotency-Key, If-Match, If-None-Match, Request-Id,"
          + " traceparent, tracestate";
  private static final String READ =
      "Deprecation, ETag, Link, Location, RateLimit, RateLimit-Policy, Request-Id, Retry-After,"
          + " Server-Timing, Sunset";

  private final Set<String> allowed;

  CrossOrigin(CrossOriginSettings settings) {
    this.allowed = Set.copyOf(settings.allowed().orElse(List.of()));
  }

  /**
   * Puts in what the browser wants to see.
   *
   * @return whether that is the whole answer: the request only asked whether it may be sent
   */
  boolean answer(RoutingContext request) {
    if (allowed.isEmpty()) {
      return false;
    }
    MultiMap headers = request.response().headers();
    // without an origin too, or a cache would hand that answer to a page; at the end, because a
    // resource sets its own Vary before that
    request.addHeadersEndHandler(end -> headers.add(HttpHeaders.VARY, "Origin"));
    String origin = request.request().getHeader(HttpHeaders.ORIGIN);
    if (origin == null) {
      return false;
    }
    if (!allowed.contains(ANY) && !allowed.contains(origin)) {
      return false;
    }
    headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_ORIGIN, allowed.contains(ANY) ? ANY : origin);
    if (!isPreflight(request)) {
      headers.set(HttpHeaders.ACCESS_CONTROL_EXPOSE_HEADERS, READ);
      return false;
    }
    headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_METHODS, METHODS);
    headers.set(HttpHeaders.ACCESS_CONTROL_ALLOW_HEADERS, SENT);
    headers.set(HttpHeaders.ACCESS_CONTROL_MAX_AGE, KEPT_S);
    request.response().setStatusCode(NO_CONTENT).end();
    return true;
  }

  private static boolean isPreflight(RoutingContext request) {
    @Nullable String method =
        request.request().getHeader(HttpHeaders.ACCESS_CONTROL_REQUEST_METHOD);
    return request.request().method() == HttpMethod.OPTIONS && method != null;
  }
}
