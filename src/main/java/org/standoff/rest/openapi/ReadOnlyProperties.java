package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.standoff.rest.json.TakesBack;

/**
 * Tells which members of a request that takes an answer back only the service sets: those of the
 * answer that the request has not of its own.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ReadOnlyProperties implements OASFilter {

  private static final DotName TAKES_BACK = DotName.createSimple(TakesBack.class.getName());

  private final IndexView index;

  public ReadOnlyProperties(IndexView index) {
    this.index = index;
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    Map<String, Schema> schemas = description.getComponents().getSchemas();
    for (AnnotationInstance taken : index.getAnnotations(TAKES_BACK)) {
      Schema request = schemas.get(SchemaNames.of(taken.target().asClass()));
      Schema answer =
          schemas.get(SchemaNames.of(index.getClassByName(taken.value().asClass().name())));
      // parts of the description come by here before it is whole
      if (request != null && answer != null) {
        answer.getProperties().forEach((name, member) -> tell(request, name, member));
      }
    }
  }

  private static void tell(Schema request, String name, Schema member) {
    if (!request.getProperties().containsKey(name)) {
      member.setReadOnly(true);
      request.addProperty(name, member);
    }
  }
}
