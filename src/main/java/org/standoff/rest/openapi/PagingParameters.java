package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.standoff.rest.http.PageRequest;

/** Describes, for every operation that answers with a page, how to ask for one. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class PagingParameters implements OASFilter {

  private static final String PAGE = "#/components/schemas/Page";
  private static final int LONGEST_TOKEN = 400;

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    for (PathItem item : description.getPaths().getPathItems().values()) {
      if (item.getGET() != null && answersWithAPage(item.getGET())) {
        describe(item.getGET());
      }
    }
  }

  private static boolean answersWithAPage(Operation operation) {
    APIResponse good = operation.getResponses().getAPIResponse("200");
    if (good == null || good.getContent() == null) {
      return false;
    }
    return good.getContent().getMediaTypes().values().stream()
        .map(MediaType::getSchema)
        .anyMatch(schema -> schema != null && String.valueOf(schema.getRef()).startsWith(PAGE));
  }

  private static void describe(Operation operation) {
    List<Parameter> parameters =
        operation.getParameters() == null
            ? new ArrayList<>()
            : new ArrayList<>(operation.getParameters());
    parameters.removeIf(
        parameter ->
            parameter.getName().equals(PageRequest.SIZE)
                || parameter.getName().equals(PageRequest.TOKEN));
    parameters.add(
        parameter(
            PageRequest.SIZE,
            "How many items a page has at most; more than "
                + PageRequest.LARGEST_SIZE
                + " counts as that",
            OASFactory.createSchema()
                .addType(Schema.SchemaType.INTEGER)
                .format("int32")
                .minimum(BigDecimal.ONE)
                .maximum(BigDecimal.valueOf(PageRequest.LARGEST_ASKED))
                .defaultValue(PageRequest.DEFAULT_SIZE)));
    parameters.add(
        parameter(
            PageRequest.TOKEN,
            "Which page: next_page_token of the page before, under the same other parameters",
            OASFactory.createSchema().addType(Schema.SchemaType.STRING).maxLength(LONGEST_TOKEN)));
    operation.setParameters(parameters);
  }

  private static Parameter parameter(String name, String description, Schema schema) {
    return OASFactory.createParameter()
        .name(name)
        .in(Parameter.In.QUERY)
        .description(description)
        .schema(schema);
  }
}
