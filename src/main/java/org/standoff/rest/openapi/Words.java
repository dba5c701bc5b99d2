package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Properties;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;

/**
 * Says what a member means where its record can't: the records of the core know nothing of any
 * description. A name means the same wherever it stands; where it doesn't, {@code Record.name} has
 * words of its own. The words stand in {@code openapi/words.properties}.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD, priority = Words.LATE)
public class Words implements OASFilter {

  /** After everything that makes members. */
  static final int LATE = -100;

  private static final String RESOURCE = "/openapi/words.properties";

  private final Properties words = PropertiesFile.read(RESOURCE);

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
              if (schema.getDescription() == null && words.containsKey(name)) {
                schema.setDescription(words.getProperty(name));
              }
              describe(name, schema);
            });
  }

  private void describe(String record, Schema schema) {
    if (schema.getProperties() == null) {
      return;
    }
    schema
        .getProperties()
        .forEach(
            (name, member) -> {
              if (member.getDescription() == null) {
                member.setDescription(
                    words.getProperty(record + "." + name, words.getProperty(name)));
              }
            });
  }
}
