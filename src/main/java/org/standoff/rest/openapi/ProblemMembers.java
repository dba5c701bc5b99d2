package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;

/** Describes what problems and faults of some kinds tell in members of their own. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD)
public class ProblemMembers implements OASFilter {

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getComponents() == null || description.getComponents().getSchemas() == null) {
      return;
    }
    Map<String, Schema> schemas = description.getComponents().getSchemas();
    for (ProblemMember member : ProblemMember.values()) {
      Schema whole = schemas.get(member.isOfOneFault() ? "Fault" : "Problem");
      if (whole != null) {
        whole.addProperty(member.word(), schema(member).description(words(member)));
      }
    }
  }

  private static String words(ProblemMember member) {
    String types =
        Arrays.stream(ProblemType.values())
            .filter(type -> type.members().contains(member))
            .map(Enum::name)
            .collect(Collectors.joining(", "));
    return member.meaning() + " (" + types + ")";
  }

  private static Schema schema(ProblemMember member) {
    Schema schema = OASFactory.createSchema();
    return switch (member.form()) {
      case INTEGER -> schema.type(List.of(SchemaType.INTEGER)).format("int64");
      case NUMBER -> schema.type(List.of(SchemaType.NUMBER)).format("double");
      case TEXT -> schema.type(List.of(SchemaType.STRING));
      case MOMENT -> schema.type(List.of(SchemaType.STRING)).format("date-time");
      case TEXTS ->
          schema
              .type(List.of(SchemaType.ARRAY))
              .items(OASFactory.createSchema().type(List.of(SchemaType.STRING)));
    };
  }
}
