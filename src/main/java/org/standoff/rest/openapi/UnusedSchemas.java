package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;

/** Leaves out what nothing refers to: records of queries, whose members are parameters by now. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD, priority = UnusedSchemas.LAST)
public class UnusedSchemas implements OASFilter {

  static final int LAST = -200;

  private static final Pattern REFERENCE = Pattern.compile("#/components/schemas/([A-Za-z0-9_]+)");

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    Map<String, Schema> schemas = new TreeMap<>(description.getComponents().getSchemas());
    Set<String> used = new HashSet<>();
    follow(String.valueOf(description.getPaths()), schemas, used);
    schemas.keySet().retainAll(used);
    description.getComponents().setSchemas(schemas);
  }

  private static void follow(String text, Map<String, Schema> schemas, Set<String> used) {
    Matcher reference = REFERENCE.matcher(text);
    while (reference.find()) {
      String name = reference.group(1);
      if (used.add(name) && schemas.containsKey(name)) {
        follow(String.valueOf(schemas.get(name)), schemas, used);
      }
    }
  }
}
