package org.standoff.rest.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.standoff.answers.TooCostly;

/** Turns exceptions into problem documents, for resources and for what lies in front of them. */
@ApplicationScoped
public class Problems {

  private static final Logger LOG = Logger.getLogger(Problems.class);

  private final ObjectMapper json;
  private final AllowedMethods allowed;

  Problems(ObjectMapper json, AllowedMethods allowed) {
    this.json = json;
    this.allowed = allowed;
  }

  /** The document that tells about an exception; what is our own fault goes to the log in full. */
  public Problem of(Throwable exception, String requestId) {
    return of(ExceptionTable.tell(exception), exception, requestId);
  }

  private static Problem of(ExceptionTable.Told told, Throwable exception, String requestId) {
    if (told.type() == ProblemType.INTERNAL) {
      LOG.errorf(exception, "Request %s failed", requestId);
    }
    return document(told, requestId)
        .costing(exception instanceof TooCostly costly ? costly.cost() : null);
  }

  private static Problem document(ExceptionTable.Told told, String requestId) {
    return Problem.of(
        told.type(), told.detail(), told.faults(), told.members(), told.inTheWay(), requestId);
  }

  Response answer(Throwable exception, RoutingContext request) {
    ExceptionTable.Told told = told(exception, request);
    Problem problem = of(told, exception, RequestId.of(request));
    Response.ResponseBuilder response =
        Response.status(problem.status()).type(Problem.MEDIA_TYPE).entity(text(problem));
    told.headers().forEach(response::header);
    if (problem.status() == ProblemType.METHOD_NOT_ALLOWED.status()) {
      response.header(HttpHeaders.ALLOW, allowed.at(request.normalizedPath()));
    }
    retryAfter(told).ifPresent(seconds -> response.header(HttpHeaders.RETRY_AFTER, seconds));
    return response.build();
  }

  /** The framework looks no further than the first resource whose path could have led there. */
  private ExceptionTable.Told told(Throwable exception, RoutingContext request) {
    boolean onlyTheMethodIsWrong =
        exception instanceof NotFoundException
            && allowed.refuses(request.normalizedPath(), request.request().method().name());
    return onlyTheMethodIsWrong
        ? ExceptionTable.Told.of(
            ProblemType.METHOD_NOT_ALLOWED, ProblemType.METHOD_NOT_ALLOWED.meaning())
        : ExceptionTable.tell(exception);
  }

  /** Answers a request that no resource has seen. */
  public void send(RoutingContext request, ProblemType type, String detail) {
    send(request, ExceptionTable.Told.of(type, detail));
  }

  /** The same, where nothing more is known than the kind of problem. */
  public void send(RoutingContext request, ProblemType type) {
    send(request, ExceptionTable.byItself(type));
  }

  /** The same, with members that belong to this kind of problem. */
  public void send(RoutingContext request, ProblemType type, String detail, ToldMembers members) {
    send(request, ExceptionTable.Told.of(type, detail).with(members));
  }

  /** The same, in the words for an exception. */
  public void send(RoutingContext request, Throwable exception) {
    send(request, ExceptionTable.tell(exception));
  }

  private void send(RoutingContext request, ExceptionTable.Told told) {
    Problem problem = document(told, RequestId.of(request));
    HttpServerResponse response = request.response();
    retryAfter(told).ifPresent(s -> response.putHeader(HttpHeaders.RETRY_AFTER, s));
    response
        .setStatusCode(problem.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
        .putHeader(HttpHeaders.CACHE_CONTROL, "no-store")
        .end(text(problem));
  }

  private static Optional<String> retryAfter(ExceptionTable.Told told) {
    return told.members().value(ProblemMember.RETRY_AFTER_S).map(Object::toString);
  }

  private String text(Problem problem) {
    try {
      return json.writeValueAsString(problem);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("A problem can always be written", impossible);
    }
  }
}
