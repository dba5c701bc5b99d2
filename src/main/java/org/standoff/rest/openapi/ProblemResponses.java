package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.standoff.rest.problem.Problem;
import org.standoff.rest.problem.ProblemType;

/** Says for every operation which problems it may answer with. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ProblemResponses implements OASFilter {

  private static final String SCHEMA = "#/components/schemas/Problem";
  private static final String VERSIONED = "/v1/";
  private static final Set<String> CALCULATIONS = Set.of("/v1/settings", "/v1/headroom");

  /** Invalid request and malformed body share a status; one entry tells of both. */
  private static final Set<ProblemType> ALWAYS =
      EnumSet.of(ProblemType.INVALID_REQUEST, ProblemType.NOT_ACCEPTABLE, ProblemType.INTERNAL);

  private static final Set<ProblemType> WITH_A_BODY =
      EnumSet.of(ProblemType.TOO_LARGE, ProblemType.UNSUPPORTED_MEDIA_TYPE);

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    description
        .getPaths()
        .getPathItems()
        .forEach((path, item) -> item.getOperations().forEach((m, o) -> complete(path, m, o)));
  }

  private static void complete(String path, PathItem.HttpMethod method, Operation operation) {
    Set<ProblemType> types = EnumSet.copyOf(ALWAYS);
    if (operation.getRequestBody() != null || method == PathItem.HttpMethod.POST) {
      types.addAll(WITH_A_BODY);
    }
    if (path.startsWith(VERSIONED)) {
      types.add(ProblemType.UNAVAILABLE);
    }
    if (CALCULATIONS.contains(path)) {
      types.add(ProblemType.RULE_BROKEN);
    }
    if (path.contains("{")) {
      types.add(ProblemType.NOT_FOUND);
    }
    if (operation.getResponses() == null) {
      operation.setResponses(OASFactory.createAPIResponses());
    }
    Map<String, APIResponse> known = operation.getResponses().getAPIResponses();
    for (ProblemType type : types) {
      String status = String.valueOf(type.status());
      if (known == null || !known.containsKey(status)) {
        operation.getResponses().addAPIResponse(status, response(type));
      }
    }
  }

  private static APIResponse response(ProblemType type) {
    return OASFactory.createAPIResponse()
        .description(type.title())
        .content(
            OASFactory.createContent()
                .addMediaType(
                    Problem.MEDIA_TYPE,
                    OASFactory.createMediaType().schema(OASFactory.createSchema().ref(SCHEMA))));
  }
}
