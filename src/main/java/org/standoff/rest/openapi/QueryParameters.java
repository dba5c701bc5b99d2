package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.AnnotationTarget;
import org.jboss.jandex.AnnotationValue;
import org.jboss.jandex.ClassInfo;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.jboss.jandex.MethodInfo;
import org.standoff.rest.http.ReadsQuery;

/**
 * Lists the members of a record as the parameters of the GET that reads its query into it; members
 * of a member follow with a dot. The description of the record comes from the POST twin, so one
 * place tells of both.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class QueryParameters implements OASFilter {

  private static final DotName READS_QUERY = DotName.createSimple(ReadsQuery.class.getName());
  private static final DotName PATH = DotName.createSimple("jakarta.ws.rs.Path");
  private static final String SCHEMAS = "#/components/schemas/";
  private static final int DEEPEST = 3;

  /** Name of the record by the path of its GET. */
  private final Map<String, String> records = new TreeMap<>();

  public QueryParameters(IndexView index) {
    for (AnnotationInstance annotation : index.getAnnotations(READS_QUERY)) {
      if (annotation.target().kind() == AnnotationTarget.Kind.METHOD) {
        MethodInfo method = annotation.target().asMethod();
        ClassInfo record = index.getClassByName(annotation.value().asClass().name());
        records.put(path(method), record.simpleName());
      }
    }
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getComponents() == null) {
      return;
    }
    Map<String, Schema> schemas = description.getComponents().getSchemas();
    records.forEach(
        (path, record) -> {
          PathItem item = description.getPaths().getPathItem(path);
          if (item != null && item.getGET() != null && schemas.containsKey(record)) {
            add(item.getGET(), "", schemas.get(record), schemas, DEEPEST);
          }
        });
  }

  private static void add(
      Operation get, String prefix, Schema record, Map<String, Schema> schemas, int deeper) {
    if (record.getProperties() == null) {
      return;
    }
    List<String> required = record.getRequired() == null ? List.of() : record.getRequired();
    record
        .getProperties()
        .forEach(
            (name, member) -> {
              Schema target = target(member, schemas);
              if (target.getProperties() != null && deeper > 0) {
                add(get, prefix + name + ".", target, schemas, deeper - 1);
              } else {
                boolean needed = prefix.isEmpty() && required.contains(name);
                get.addParameter(parameter(prefix + name, member, needed));
              }
            });
  }

  private static Schema target(Schema schema, Map<String, Schema> schemas) {
    String reference = schema.getRef();
    return reference != null && reference.startsWith(SCHEMAS)
        ? schemas.getOrDefault(reference.substring(SCHEMAS.length()), schema)
        : schema;
  }

  private static Parameter parameter(String name, Schema schema, boolean required) {
    return OASFactory.createParameter()
        .name(name)
        .in(Parameter.In.QUERY)
        .required(required)
        .description(schema.getDescription())
        .schema(schema);
  }

  private static String path(MethodInfo method) {
    String whole =
        "/"
            + text(method.declaringClass().declaredAnnotation(PATH))
            + "/"
            + text(method.annotation(PATH));
    String single = whole.replaceAll("/+", "/");
    return single.length() > 1 && single.endsWith("/")
        ? single.substring(0, single.length() - 1)
        : single;
  }

  private static String text(AnnotationInstance annotation) {
    AnnotationValue value = annotation == null ? null : annotation.value();
    return value == null ? "" : value.asString();
  }
}
