package org.standoff.rest.http;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.logging.Logger;
import org.jboss.logging.MDC;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.BodyTooLarge;
import org.standoff.rest.problem.Problem;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.Problems;
import org.standoff.rest.problem.RequestId;
import org.standoff.rest.problem.RetryAfter;
import org.standoff.rest.problem.ToldMembers;

/** What happens to every request before any resource sees it, health and metrics included. */
@ApplicationScoped
public class FrontDoor {

  /** Before the framework's own limit, which closes the connection without a word. */
  private static final int BEFORE_THE_FRAMEWORK = 1000;

  private static final Logger LOG = Logger.getLogger(FrontDoor.class);
  private static final String LOG_KEY = "request_id";

  private static final String TRACE_LOG_KEY = "trace_id";
  private static final String LIMITED = "/v1/";

  /** What a body means to them nobody has said (RFC 9110, 9.3.1), and none is read. */
  private static final Set<HttpMethod> BODILESS = Set.of(HttpMethod.GET, HttpMethod.HEAD);

  private static final String ZERO = "%00";
  private static final String MATRIX = ";";

  private final Problems problems;
  private final CrossOrigin crossOrigin;
  private final BodyIntake intake;
  private final Admission admission;
  private final RateLimit rate;

  FrontDoor(
      Problems problems,
      CrossOrigin crossOrigin,
      BodyIntake intake,
      Admission admission,
      RateLimit rate) {
    this.problems = problems;
    this.crossOrigin = crossOrigin;
    this.intake = intake;
    this.admission = admission;
    this.rate = rate;
  }

  void install(@Observes Filters filters) {
    filters.register(this::open, BEFORE_THE_FRAMEWORK);
  }

  /** What fails outside any resource gets a problem too. */
  void installFailures(@Observes Router router) {
    router.route().order(-BEFORE_THE_FRAMEWORK).failureHandler(this::fail);
  }

  private void open(RoutingContext request) {
    HeadTimeout.whole(request.request());
    request.addEndHandler(over -> HeadTimeout.over(request.request()));
    request.addHeadersEndHandler(
        ServerTiming.from(
            System::nanoTime, () -> DatabaseTime.of(request), request.response().headers()));
    greet(request);
    if (crossOrigin.answer(request)) {
      return;
    }
    String type = request.request().getHeader(HttpHeaders.CONTENT_TYPE);
    int most = BodyLimit.of(request.normalizedPath(), type);
    if (declaredBytes(request) > most) {
      refuse(request, () -> problems.send(request, new BodyTooLarge(most)));
    } else if (namesNothing(request.request().path())) {
      refuse(request, () -> problems.send(request, ProblemType.NOT_FOUND));
    } else if (request.request().uri().contains(ZERO)) {
      refuse(
          request,
          () ->
              problems.send(
                  request, ProblemType.INVALID_REQUEST, "The query has a zero character."));
    } else if (!isMediaType(type)) {
      refuse(request, () -> problems.send(request, ProblemType.UNSUPPORTED_MEDIA_TYPE));
    } else if (!isLimited(request) || isWithinRate(request) && isWorthReading(request)) {
      if (type == null && hasBody(request)) {
        // as RFC 9110, 8.3 allows; the framework would take it for whatever it finds first
        request.request().headers().set(HttpHeaders.CONTENT_TYPE, MediaType.APPLICATION_JSON);
      }
      if (BODILESS.contains(request.request().method())) {
        workOn(request, () -> {});
      } else {
        intake.take(request, most, whenDone -> workOn(request, whenDone));
      }
    }
  }

  private void workOn(RoutingContext request, Runnable whenDone) {
    if (!isLimited(request)) {
      request.addEndHandler(over -> whenDone.run());
      request.next();
      return;
    }
    Optional<Place> place = admission.enter(whenDone);
    if (place.isPresent()) {
      place.get().take(request);
      request.next();
    } else {
      whenDone.run();
      sendOverloaded(request);
    }
  }

  /** What is still to come of the request would be taken for the head of another. */
  private static void refuse(RoutingContext request, Runnable send) {
    if (hasBody(request) && !request.request().isEnded()) {
      LastOfConnection.mark(request);
    }
    send.run();
  }

  /** Health, metrics and the description answer however much is asked. */
  private static boolean isLimited(RoutingContext request) {
    return request.normalizedPath().startsWith(LIMITED);
  }

  private boolean isWithinRate(RoutingContext request) {
    Optional<RateLimit.Share> counted =
        rate.count(CallerNetwork.of(request.request().remoteAddress()));
    if (counted.isPresent()) {
      RateLimit.Share share = counted.get();
      request.response().headers().set("RateLimit-Policy", share.policy());
      request.response().headers().set("RateLimit", share.state());
      if (share.isUsedUp()) {
        refuse(request, () -> sendTooMany(request, share));
        return false;
      }
    }
    return true;
  }

  private boolean isWorthReading(RoutingContext request) {
    if (admission.isFull()) {
      refuse(request, () -> sendOverloaded(request));
      return false;
    }
    return true;
  }

  private void sendTooMany(RoutingContext request, RateLimit.Share share) {
    problems.send(
        request,
        ProblemType.TOO_MANY,
        "At most %d requests in %d seconds.".formatted(share.most(), share.windowS()),
        ToldMembers.of(ProblemMember.LIMIT_REQUESTS, share.most())
            .and(ProblemMember.WINDOW_S, share.windowS())
            .and(ProblemMember.VIOLATED_POLICIES, List.of(RateLimit.POLICY))
            .and(ProblemMember.RETRY_AFTER_S, share.waitS()));
  }

  private void sendOverloaded(RoutingContext request) {
    problems.send(
        request,
        ProblemType.OVERLOADED,
        "%d requests are worked on already.".formatted(admission.most()),
        RetryAfter.OTHERS_ARE_ANSWERED
            .told()
            .and(ProblemMember.MAX_CONCURRENT_REQUESTS, admission.most()));
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
    problems.send(request, ProblemType.ofStatus(request.statusCode()));
  }

  private static void greet(RoutingContext request) {
    String id = RequestId.given(request.request().getHeader(RequestId.HEADER));
    RequestId.set(request, id);
    MDC.put(LOG_KEY, id);
    TraceContext.traceId(request.request().getHeader(TraceContext.HEADER))
        .ifPresent(trace -> MDC.put(TRACE_LOG_KEY, trace));
    MultiMap headers = request.response().headers();
    headers.set(RequestId.HEADER, id);
    headers.set(HttpHeaders.CONTENT_LANGUAGE, Problem.LANGUAGE);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'");
  }

  /**
   * No name has a zero character, and the database takes no text that has. What follows a semicolon
   * the framework drops later, and would find what was neither counted nor guarded here.
   */
  private static boolean namesNothing(String path) {
    return path.contains(ZERO) || path.contains(MATRIX);
  }

  /** The framework calls what is no media type a fault of its own, and takes a range for all. */
  private static boolean isMediaType(@Nullable String contentType) {
    try {
      return contentType == null || !MediaType.valueOf(contentType).isWildcardSubtype();
    } catch (IllegalArgumentException unreadable) {
      return false;
    }
  }

  private static boolean hasBody(RoutingContext request) {
    return declaredBytes(request) > 0
        || request.request().getHeader(HttpHeaders.TRANSFER_ENCODING) != null;
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
