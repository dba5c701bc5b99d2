package org.standoff.rest.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.logging.Logger;

/** Turns exceptions into problem documents, for resources and for what lies in front of them. */
@ApplicationScoped
public class Problems {

  private static final Logger LOG = Logger.getLogger(Problems.class);
  private static final String RETRY_AFTER_S = "5";

  private final ObjectMapper json;
  private final AllowedMethods allowed;

  Problems(ObjectMapper json, AllowedMethods allowed) {
    this.json = json;
    this.allowed = allowed;
  }

  /** The document that tells about an exception; what is our own fault goes to the log in full. */
  public Problem of(Throwable exception, String requestId) {
    ExceptionTable.Told told = ExceptionTable.tell(exception);
    if (told.type() == ProblemType.INTERNAL) {
      LOG.errorf(exception, "Request %s failed", requestId);
    }
    return Problem.of(told.type(), told.detail(), told.faults(), requestId);
  }

  Response answer(Throwable exception, RoutingContext request) {
    Problem problem = of(exception, RequestId.of(request));
    Response.ResponseBuilder response =
        Response.status(problem.status()).type(Problem.MEDIA_TYPE).entity(text(problem));
    if (problem.status() == ProblemType.METHOD_NOT_ALLOWED.status()) {
      response.header(HttpHeaders.ALLOW, allowed.at(request.normalizedPath()));
    }
    if (problem.status() == ProblemType.UNAVAILABLE.status()) {
      response.header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_S);
    }
    return response.build();
  }

  /** Answers a request that no resource has seen. */
  public void send(RoutingContext request, ProblemType type, String detail) {
    Problem problem = Problem.of(type, detail, List.of(), RequestId.of(request));
    request
        .response()
        .setStatusCode(problem.status())
        .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
        .putHeader(HttpHeaders.CACHE_CONTROL, "no-store")
        .end(text(problem));
  }

  private String text(Problem problem) {
    try {
      return json.writeValueAsString(problem);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("A problem can always be written", impossible);
    }
  }
}
