package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.jboss.jandex.AnnotationInstance;
import org.jboss.jandex.DotName;
import org.jboss.jandex.IndexView;
import org.standoff.rest.http.ReadsQuery;

/**
 * Lists the members of a record as the parameters of the GET that reads its query into it; members
 * of a member follow with a dot. The description of the record comes from the POST twin, so one
 * place tells of both. A reference to an item is its id here: an item itself doesn't go into a
 * query.
 */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class QueryParameters implements OASFilter {

  private static final DotName READS_QUERY = DotName.createSimple(ReadsQuery.class.getName());
  private static final String SCHEMAS = "#/components/schemas/";
  private static final int DEEPEST = 3;

  private final IndexView index;

  public QueryParameters(IndexView index) {
    this.index = index;
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null) {
      return;
    }
    Map<String, Schema> schemas = description.getComponents().getSchemas();
    for (ResourceMethods.Found found : ResourceMethods.of(index)) {
      AnnotationInstance reads = found.method().annotation(READS_QUERY);
      Operation get = found.operation(description);
      if (reads != null && get != null && isDescribed(found)) {
        String record = index.getClassByName(reads.value().asClass().name()).simpleName();
        if (schemas.containsKey(record)) {
          add(get, "", schemas.get(record), schemas, DEEPEST);
        }
        QuerySamples.of(found.method(), index).forEach(sample -> sample.show(get));
      }
    }
  }

  /** Several methods may stand for one operation; the one that makes JSON is described. */
  private static boolean isDescribed(ResourceMethods.Found found) {
    return found.produces().isEmpty() || found.produces().contains("application/json");
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
              } else if (fits(member, schemas)) {
                boolean needed = prefix.isEmpty() && required.contains(name);
                get.addParameter(parameter(prefix + name, member, plain(member, schemas), needed));
              }
            });
  }

  /** A list of objects does not fit a query. */
  private static boolean fits(Schema member, Map<String, Schema> schemas) {
    return member.getItems() == null || target(member.getItems(), schemas).getProperties() == null;
  }

  /** The schema with every reference to an item as an id. */
  private static Schema plain(Schema schema, Map<String, Schema> schemas) {
    Schema target = target(schema, schemas);
    if (target.getOneOf() != null) {
      return target.getOneOf().get(0);
    }
    if (schema.getItems() == null) {
      return schema;
    }
    Schema items = plain(schema.getItems(), schemas);
    return OASFactory.createSchema()
        .addType(Schema.SchemaType.ARRAY)
        .minItems(schema.getMinItems())
        .maxItems(schema.getMaxItems())
        .items(items);
  }

  private static Schema target(Schema schema, Map<String, Schema> schemas) {
    String reference = schema.getRef();
    return reference != null && reference.startsWith(SCHEMAS)
        ? schemas.getOrDefault(reference.substring(SCHEMAS.length()), schema)
        : schema;
  }

  private static Parameter parameter(String name, Schema member, Schema schema, boolean required) {
    return OASFactory.createParameter()
        .name(name)
        .in(Parameter.In.QUERY)
        .required(required)
        .description(member.getDescription())
        .schema(schema);
  }
}
