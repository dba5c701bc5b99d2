package org.standoff.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.problem.ProblemPages;
import org.standoff.rest.problem.ProblemType;

/** All kinds of problems. */
@Path("/problems")
@Tag(name = "service")
public class ProblemKinds {

  private static final List<ProblemPages.Explanation> ALL =
      Stream.of(ProblemType.values())
          .map(ProblemPages.Explanation::of)
          .sorted(Comparator.comparing(ProblemPages.Explanation::code))
          .toList();

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "listProblems",
      summary = "Kinds of problems, and what to do about each",
      description = "In the order of their codes. Each is explained at its own address too.")
  @Parameter(name = PageRequest.SIZE, in = ParameterIn.QUERY)
  @Parameter(name = PageRequest.TOKEN, in = ParameterIn.QUERY)
  public Page<ProblemPages.Explanation> list(@Context UriInfo uri) {
    return PageRequest.of(uri).of(ALL, ProblemPages.Explanation::code);
  }
}
