package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.security.SecurityRequirement;
import org.standoff.rest.problem.Problem;
import org.standoff.rest.problem.ProblemType;

/** Says for every operation which problems it may answer with, and whether it wants a token. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ProblemResponses implements OASFilter {

  private static final String SCHEMA = "#/components/schemas/Problem";
  private static final String VERSIONED = "/v1/";
  private static final String UNAUTHENTICATED =
      String.valueOf(ProblemType.UNAUTHENTICATED.status());

  /** Who holds is known by name, even to read. */
  private static final String HOLDS = "/v1/holds";

  /** Read for a period, which may be none. */
  private static final String DIARY = "/diary";

  /** Invalid request and malformed body share a status; one entry tells of both. */
  private static final Set<ProblemType> ALWAYS =
      EnumSet.of(ProblemType.INVALID_REQUEST, ProblemType.NOT_ACCEPTABLE, ProblemType.INTERNAL);

  private static final Set<ProblemType> WITH_A_BODY =
      EnumSet.of(ProblemType.TOO_SLOW, ProblemType.TOO_LARGE, ProblemType.UNSUPPORTED_MEDIA_TYPE);

  /** What is changed at its address has an owner, and a state that others change too. */
  private static final Set<ProblemType> WHEN_CHANGED =
      EnumSet.of(
          ProblemType.UNAUTHENTICATED,
          ProblemType.FORBIDDEN,
          ProblemType.CLASH,
          ProblemType.STALE,
          ProblemType.RULE_BROKEN,
          ProblemType.PRECONDITION_WANTED);

  /** What is made has an owner, and may clash with what stands. */
  private static final Set<ProblemType> WHEN_MADE =
      EnumSet.of(ProblemType.FORBIDDEN, ProblemType.CLASH, ProblemType.RULE_BROKEN);

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    description
        .getPaths()
        .getPathItems()
        .forEach(
            (path, item) -> item.getOperations().forEach((m, o) -> complete(path, item, m, o)));
  }

  private static void complete(
      String path, PathItem item, PathItem.HttpMethod method, Operation operation) {
    Set<ProblemType> types = EnumSet.copyOf(ALWAYS);
    if (operation.getRequestBody() != null || method == PathItem.HttpMethod.POST) {
      types.addAll(WITH_A_BODY);
    }
    if (method == PathItem.HttpMethod.PUT || method == PathItem.HttpMethod.DELETE) {
      types.addAll(WHEN_CHANGED);
    }
    if (path.startsWith(HOLDS)) {
      types.add(ProblemType.UNAUTHENTICATED);
      if (method == PathItem.HttpMethod.POST) {
        types.addAll(path.equals(HOLDS) ? WHEN_MADE : WHEN_CHANGED);
      }
    }
    if (path.startsWith(VERSIONED)) {
      types.add(ProblemType.TOO_MANY);
      types.add(ProblemType.UNAVAILABLE);
    }
    if (path.endsWith(DIARY)) {
      types.add(ProblemType.RULE_BROKEN);
    }
    // what is asked by POST is computed or booked, by GET as well where both are offered
    if (path.startsWith(VERSIONED) && item.getPOST() != null) {
      types.add(ProblemType.RULE_BROKEN);
    }
    if (path.contains("{")) {
      types.add(ProblemType.NOT_FOUND);
    }
    if (operation.getResponses() == null) {
      operation.setResponses(OASFactory.createAPIResponses());
    }
    Map<String, APIResponse> known = operation.getResponses().getAPIResponses();
    boolean guarded =
        types.contains(ProblemType.UNAUTHENTICATED)
            || known != null && known.containsKey(UNAUTHENTICATED);
    boolean closedBySetting = !guarded && path.startsWith(VERSIONED);
    if (closedBySetting) {
      types.add(ProblemType.UNAUTHENTICATED);
    }
    operation.setSecurity(security(guarded, closedBySetting));
    for (ProblemType type : types) {
      String status = String.valueOf(type.status());
      if (known == null || !known.containsKey(status)) {
        operation.getResponses().addAPIResponse(status, response(type));
      }
    }
  }

  /** Where nobody has to say who they are, that is told too, or a reader would wonder. */
  private static List<SecurityRequirement> security(boolean guarded, boolean closedBySetting) {
    SecurityRequirement known = OASFactory.createSecurityRequirement().addScheme(Contract.BEARER);
    SecurityRequirement anybody = OASFactory.createSecurityRequirement();
    if (guarded) {
      return List.of(known);
    }
    return closedBySetting ? List.of(anybody, known) : List.of(anybody);
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
