package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** Says how a change names the state that it was made for. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ChangeHeaders implements OASFilter {

  private static final int LONGEST = 400;

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    for (PathItem item : description.getPaths().getPathItems().values()) {
      if (item.getPUT() != null) {
        add(item.getPUT(), "If-Match", "ETag of the state that this changes, with its quotes");
        add(item.getPUT(), "If-None-Match", "* to make what is not there yet, and nothing else");
      }
      if (item.getDELETE() != null) {
        add(item.getDELETE(), "If-Match", "ETag of the state that this takes away");
      }
    }
  }

  private static void add(Operation operation, String header, String words) {
    List<Parameter> parameters =
        operation.getParameters() == null
            ? new ArrayList<>()
            : new ArrayList<>(operation.getParameters());
    parameters.add(
        OASFactory.createParameter()
            .name(header)
            .in(Parameter.In.HEADER)
            .description(words)
            .schema(
                OASFactory.createSchema().addType(Schema.SchemaType.STRING).maxLength(LONGEST)));
    operation.setParameters(parameters);
  }
}
