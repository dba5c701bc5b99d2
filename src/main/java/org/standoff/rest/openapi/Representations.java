package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.jboss.jandex.IndexView;

/**
 * Puts the forms of an answer together. A resource has a method for each media type, but to a
 * caller it is one operation: one of the methods is described, the others are hidden and add their
 * media types to it here.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class Representations implements OASFilter {

  private static final String OK = "200";

  private final List<ResourceMethods.Found> methods;

  public Representations(IndexView index) {
    methods = ResourceMethods.of(index);
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    for (ResourceMethods.Found method : methods) {
      Operation operation = method.operation(description);
      APIResponse good =
          operation == null || operation.getResponses() == null
              ? null
              : operation.getResponses().getAPIResponse(OK);
      if (good != null) {
        if (good.getContent() == null) {
          good.setContent(OASFactory.createContent());
        }
        method.produces().forEach(type -> add(good.getContent(), type));
      }
    }
  }

  private static void add(Content content, String mediaType) {
    if (content.getMediaType(mediaType) == null) {
      content.addMediaType(
          mediaType,
          OASFactory.createMediaType()
              .schema(OASFactory.createSchema().addType(Schema.SchemaType.STRING)));
    }
  }
}
