package org.standoff.contract;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.standoff.fixture.Ask;

/** The description that the running service serves. */
final class Described {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JsonNode description;

  private Described(JsonNode description) {
    this.description = description;
  }

  /**
   * One operation.
   *
   * @param path with its parameters in braces
   * @param method in lower case
   * @param told what is told of it
   */
  record Operation(String path, String method, JsonNode told) {
    String id() {
      return told.path("operationId").asText();
    }
  }

  static Described served() {
    return new Described(
        Ask.tree(given().accept("application/json").get("/openapi").then().extract().asString()));
  }

  List<Operation> operations() {
    List<Operation> all = new ArrayList<>();
    description
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .properties()
                    .forEach(
                        method ->
                            all.add(
                                new Operation(path.getKey(), method.getKey(), method.getValue()))));
    return all;
  }

  /** Schemas by name. */
  Map<String, JsonNode> schemas() {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    description
        .at("/components/schemas")
        .properties()
        .forEach(schema -> all.put(schema.getKey(), schema.getValue()));
    return all;
  }

  /** Names of the schemas that bodies are made of. */
  Set<String> sent() {
    Set<String> names = new TreeSet<>();
    operations().forEach(operation -> follow(operation.told().path("requestBody"), names));
    return names;
  }

  private void follow(JsonNode node, Set<String> names) {
    for (JsonNode reference : node.findValues("$ref")) {
      String name = reference.asText().replaceFirst(".*/", "");
      if (names.add(name)) {
        follow(schemas().get(name), names);
      }
    }
  }

  /**
   * What is wrong with an instance under a schema of the description. An object has no member that
   * its schema does not name, unless the schema says that it may.
   */
  List<String> faults(JsonNode schema, JsonNode instance) {
    ObjectNode whole = JSON.createObjectNode();
    whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    whole.setAll((ObjectNode) schema.deepCopy());
    ObjectNode components = whole.putObject("components").putObject("schemas");
    schemas().forEach((name, told) -> components.set(name, closed(told)));
    Schema compiled =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(whole.toString());
    return compiled.validate(instance.toString(), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }

  private static JsonNode closed(JsonNode schema) {
    if (schema.has("properties") && !schema.has("additionalProperties")) {
      return ((ObjectNode) schema.deepCopy()).put("additionalProperties", false);
    }
    return schema;
  }
}
