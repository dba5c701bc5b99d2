package org.standoff.rest.http;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.core.MediaType;
import org.jboss.logging.Logger;
import org.jboss.logging.MDC;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.Problems;
import org.standoff.rest.problem.RequestId;

/** What happens to every request before any resource sees it, health and metrics included. */
@ApplicationScoped
public class FrontDoor {

  /** Before the framework's own limit, which closes the connection without a word. */
  private static final int BEFORE_THE_FRAMEWORK = 1000;

  private static final Logger LOG = Logger.getLogger(FrontDoor.class);
  private static final String LOG_KEY = "request_id";

  private final Problems problems;

  FrontDoor(Problems problems) {
    this.problems = problems;
  }

  void install(@Observes Filters filters) {
    filters.register(this::open, BEFORE_THE_FRAMEWORK);
  }

  /** What fails outside any resource gets a problem too. */
  void installFailures(@Observes Router router) {
    router.route().order(-BEFORE_THE_FRAMEWORK).failureHandler(this::fail);
  }

  private void open(RoutingContext request) {
    greet(request);
    if (declaredBytes(request) > BodyLimit.BYTES) {
      request.response().headers().set(HttpHeaders.CONNECTION, "close");
      problems.send(request, ProblemType.TOO_LARGE, BodyLimit.message());
    } else if (!isMediaType(request.request().getHeader(HttpHeaders.CONTENT_TYPE))) {
      problems.send(
          request,
          ProblemType.UNSUPPORTED_MEDIA_TYPE,
          ProblemType.UNSUPPORTED_MEDIA_TYPE.meaning());
    } else {
      request.next();
    }
  }

  private void fail(RoutingContext request) {
    if (request.response().headWritten()) {
      request.next();
      return;
    }
    greet(request);
    if (request.failure() != null) {
      LOG.errorf(request.failure(), "Request %s failed before any resource", RequestId.of(request));
    }
    ProblemType type = ProblemType.ofStatus(request.statusCode());
    problems.send(request, type, type.meaning());
  }

  private static void greet(RoutingContext request) {
    String id = RequestId.given(request.request().getHeader(RequestId.HEADER));
    RequestId.set(request, id);
    MDC.put(LOG_KEY, id);
    MultiMap headers = request.response().headers();
    headers.set(RequestId.HEADER, id);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
  }

  /** The framework calls what is no media type a fault of its own. */
  private static boolean isMediaType(@Nullable String contentType) {
    try {
      return contentType == null || MediaType.valueOf(contentType) != null;
    } catch (IllegalArgumentException unreadable) {
      return false;
    }
  }

  private static long declaredBytes(RoutingContext request) {
    String length = request.request().getHeader(HttpHeaders.CONTENT_LENGTH);
    try {
      return length == null ? 0 : Long.parseLong(length);
    } catch (NumberFormatException longerThanAnyLong) {
      return Long.MAX_VALUE;
    }
  }
}
