package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.media.Schema;

/**
 * Says that a pattern holds for the whole of a text, which is what our constraints mean: in JSON
 * Schema a pattern that says nothing of the ends may match anywhere.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class WholePatterns implements OASFilter {

  private static final String BEGIN = "^";

  @Override
  public Schema filterSchema(Schema schema) {
    String pattern = schema.getPattern();
    if (pattern != null && !pattern.startsWith(BEGIN)) {
      schema.setPattern(BEGIN + "(?:" + pattern + ")$");
    }
    return schema;
  }
}
