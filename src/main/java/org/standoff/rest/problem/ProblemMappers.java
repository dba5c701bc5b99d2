package org.standoff.rest.problem;

import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.validation.ValidationException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/**
 * Puts our problems in the place of every answer that the framework would give. It has mappers of
 * its own for the classes named here, which a mapper for Throwable alone would not replace.
 */
public class ProblemMappers {

  private final Problems problems;

  ProblemMappers(Problems problems) {
    this.problems = problems;
  }

  @ServerExceptionMapper({
    Throwable.class,
    WebApplicationException.class,
    NotFoundException.class,
    ValidationException.class,
    MismatchedInputException.class,
    UnauthorizedException.class,
    AuthenticationFailedException.class,
    ForbiddenException.class
  })
  public Response map(Throwable exception, RoutingContext request) {
    return problems.answer(exception, request);
  }
}
