package org.standoff.rest.http;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.Problems;

/**
 * Ends requests whose body does not come in within a time. A time-out between two bytes is not
 * enough: a byte every few seconds would hold a worker for as long as the sender likes.
 */
@ApplicationScoped
class SlowBodies {

  private final long withinMs;
  private final Vertx vertx;
  private final Problems problems;

  SlowBodies(LimitSettings settings, Vertx vertx, Problems problems) {
    this.withinMs = settings.bodyWithin().toMillis();
    this.vertx = vertx;
    this.problems = problems;
  }

  void watch(RoutingContext request) {
    if (request.request().isEnded()) {
      return;
    }
    long timer = vertx.setTimer(withinMs, late -> endIfUnfinished(request));
    request.addEndHandler(over -> vertx.cancelTimer(timer));
  }

  private void endIfUnfinished(RoutingContext request) {
    HttpServerRequest sent = request.request();
    if (sent.isEnded() || request.response().ended()) {
      return;
    }
    request.response().headers().set(HttpHeaders.CONNECTION, "close");
    problems.send(
        request,
        ProblemType.TOO_SLOW,
        "The body did not come in within %d ms.".formatted(withinMs));
    sent.connection().close();
  }
}
