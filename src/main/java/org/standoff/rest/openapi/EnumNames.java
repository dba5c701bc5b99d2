package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.standoff.rest.json.EnumSpelling;

/**
 * Spells constants in the description as they are spelt on the wire. Codes keep their upper case.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class EnumNames implements OASFilter {

  private static final String CODES = "Code";

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    description
        .getComponents()
        .getSchemas()
        .forEach(
            (name, schema) -> {
              if (!name.endsWith(CODES)) {
                spell(schema);
              }
              if (schema.getProperties() != null) {
                // one that may be absent is listed in place
                schema.getProperties().values().forEach(EnumNames::spell);
              }
            });
  }

  private static void spell(Schema schema) {
    List<Object> constants = schema.getEnumeration();
    if (constants != null) {
      schema.setEnumeration(
          constants.stream()
              .map(constant -> (Object) EnumSpelling.of(constant.toString()))
              .toList());
    }
  }
}
