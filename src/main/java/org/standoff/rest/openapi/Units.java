package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/**
 * Tells the unit of every number for machines too, as a keyword {@code x-unit}. A number that has
 * no unit in its name ends the build, until somebody says what it is.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD, priority = Words.LATE)
public class Units implements OASFilter {
  private static final String KEYWORD = "x-unit";
  private static final String NO_RECORD = "";
  private static final char WITHIN = '.';

  private final UnitCodes codes = new UnitCodes();

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() != null && description.getComponents().getSchemas() != null) {
      description.getComponents().getSchemas().forEach(this::tellMembers);
    }
    if (description.getPaths() != null) {
      description
          .getPaths()
          .getPathItems()
          .values()
          .forEach(path -> path.getOperations().values().forEach(this::tellParameters));
    }
  }

  private void tellParameters(Operation operation) {
    if (operation.getParameters() != null) {
      operation.getParameters().forEach(this::tellParameter);
    }
  }

  private void tellParameter(Parameter parameter) {
    String name = parameter.getName();
    if (name != null && parameter.getSchema() != null) {
      tell(NO_RECORD, name.substring(name.lastIndexOf(WITHIN) + 1), parameter.getSchema());
    }
  }

  private void tellMembers(String record, Schema schema) {
    Map<String, Schema> members = schema.getProperties();
    if (members != null) {
      members.forEach((name, member) -> tell(record, name, member));
    }
  }

  private void tell(String record, String name, Schema schema) {
    if (isNumber(schema)) {
      codes.of(record, name).ifPresent(code -> schema.addExtension(KEYWORD, code));
    } else if (schema.getRef() != null || schema.getAnyOf() != null) {
      // a range, a place: its own members take the unit from here
      codes.ofMeasure(record, name).ifPresent(code -> schema.addExtension(KEYWORD, code));
    }
    if (schema.getItems() != null) {
      tell(record, name, schema.getItems());
    }
    if (schema.getAdditionalPropertiesSchema() != null) {
      tell(record, name, schema.getAdditionalPropertiesSchema());
    }
  }

  private static boolean isNumber(Schema schema) {
    List<SchemaType> types = schema.getType();
    return types != null
        && (types.contains(SchemaType.NUMBER) || types.contains(SchemaType.INTEGER));
  }
}
