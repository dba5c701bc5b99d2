package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.headers.Header;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;

/** Says that answers have a tag, and that a GET tells whoever shows it that nothing has changed. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ConditionalReading implements OASFilter {

  private static final String OK = "200";
  private static final String CREATED = "201";
  private static final String NOT_MODIFIED = "304";

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    for (PathItem item : description.getPaths().getPathItems().values()) {
      item.getOperations().forEach(ConditionalReading::complete);
    }
  }

  private static void complete(PathItem.HttpMethod method, Operation operation) {
    APIResponse good =
        operation.getResponses() == null ? null : operation.getResponses().getAPIResponse(OK);
    if (good == null) {
      return;
    }
    good.setHeaders(Map.of("ETag", tag()));
    APIResponse made = operation.getResponses().getAPIResponse(CREATED);
    if (made != null && made.getHeaders() == null) {
      made.setHeaders(Map.of("ETag", tag()));
    }
    if (method == PathItem.HttpMethod.GET) {
      operation
          .getResponses()
          .addAPIResponse(
              NOT_MODIFIED,
              OASFactory.createAPIResponse()
                  .description("The caller has this answer already: If-None-Match names its tag")
                  .headers(Map.of("ETag", tag())));
    }
  }

  private static Header tag() {
    return OASFactory.createHeader()
        .description("Name of this very answer: another answer has another tag")
        .schema(
            OASFactory.createSchema()
                .addType(Schema.SchemaType.STRING)
                .examples(List.of("\"6Bw1zqY0S2uRk1sZ4mJxNg\"")));
  }
}
