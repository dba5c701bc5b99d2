package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.time.Instant;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.standoff.rest.json.JsonSetup;

/** Tells how exactly a moment may be told: RFC 3339 itself sets its fractions no limit. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class Moments implements OASFilter {

  private static final String MOMENT = Instant.class.getSimpleName();

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    Schema moment = description.getComponents().getSchemas().get(MOMENT);
    if (moment != null) {
      moment.setPattern(JsonSetup.MOMENT);
    }
  }
}
