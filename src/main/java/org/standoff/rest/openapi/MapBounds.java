package org.standoff.rest.openapi;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.ClassInfo;
import org.jboss.jandex.DotName;
import org.jboss.jandex.FieldInfo;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.Type;

/**
 * Tells how many entries a map of a question may have, and how long their names may be, from the
 * constraints that check them. The framework tells those of the entries' values alone.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class MapBounds implements OASFilter {

  private static final DotName MAP = DotName.createSimple(Map.class.getName());
  private static final DotName SIZE = DotName.createSimple(Size.class.getName());
  private static final PropertyNamingStrategies.SnakeCaseStrategy NAMES =
      new PropertyNamingStrategies.SnakeCaseStrategy();

  private final IndexView index;

  public MapBounds(IndexView index) {
    this.index = index;
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    Map<String, Schema> schemas = description.getComponents().getSchemas();
    for (ClassInfo record : index.getKnownClasses()) {
      Schema schema = record.isRecord() ? schemas.get(SchemaNames.of(record)) : null;
      if (schema != null && schema.getProperties() != null) {
        record.fields().forEach(member -> bound(member, schema.getProperties()));
      }
    }
  }

  private static void bound(FieldInfo member, Map<String, Schema> properties) {
    Schema map = properties.get(NAMES.translate(member.name()));
    if (map == null || !member.type().name().equals(MAP)) {
      return;
    }
    Integer most = most(member.type());
    if (most != null) {
      map.setMaxProperties(most);
    }
    Integer longest = most(member.type().asParameterizedType().arguments().get(0));
    if (longest != null) {
      map.setPropertyNames(OASFactory.createSchema().maxLength(longest));
    }
  }

  private static Integer most(Type type) {
    AnnotationInstance size = type.annotation(SIZE);
    return size == null ? null : size.value("max").asInt();
  }
}
