package org.standoff.contract.generated;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** A description of an API (OpenAPI 3.1), with everything that it refers to put in place. */
final class Api {
  static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private final JsonNode root;
  private final ObjectNode closedSchemas = JSON.createObjectNode();
  private final SchemaRegistry registry =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder ->
              builder.schemaRegistryConfig(
                  SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build()));
  private final Map<JsonNode, Schema> compiled = new ConcurrentHashMap<>();

  private Api(JsonNode root) {
    this.root = root;
    root.at("/components/schemas")
        .properties()
        .forEach(schema -> closedSchemas.set(schema.getKey(), closed(schema.getValue())));
  }

  static Api read(Path file) {
    try {
      return of(Files.readString(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static Api of(String yaml) {
    try {
      return new Api(JSON.readTree(new YAMLMapper().readTree(yaml).toString()));
    } catch (JsonProcessingException unreadable) {
      throw new IllegalArgumentException(yaml, unreadable);
    }
  }

  /**
   * One operation.
   *
   * @param path with its parameters in braces
   * @param method in capitals
   * @param told what is told of it
   */
  record Operation(Api api, String path, String method, JsonNode told) {

    String id() {
      return told.path("operationId").asText(method + " " + path);
    }

    /** Its own parameters and those of its path. */
    List<Parameter> parameters() {
      List<Parameter> all = new ArrayList<>();
      api.root.path("paths").path(path).path("parameters").forEach(p -> all.add(parameter(p)));
      told.path("parameters").forEach(p -> all.add(parameter(p)));
      return all;
    }

    private Parameter parameter(JsonNode given) {
      return new Parameter(api.resolve(given));
    }

    List<Parameter> parameters(String in) {
      return parameters().stream().filter(parameter -> parameter.in().equals(in)).toList();
    }

    /** What is told of a body, by its media type. */
    Map<String, JsonNode> bodies() {
      Map<String, JsonNode> all = new LinkedHashMap<>();
      api.resolve(told.path("requestBody"))
          .path("content")
          .properties()
          .forEach(body -> all.put(body.getKey(), body.getValue()));
      return all;
    }

    /** What is told of the answer of a status; a class of statuses or the default may stand in. */
    Optional<JsonNode> response(int status) {
      JsonNode responses = told.path("responses");
      for (String key : List.of("" + status, status / 100 + "XX", "default")) {
        if (responses.has(key)) {
          return Optional.of(api.resolve(responses.get(key)));
        }
      }
      return Optional.empty();
    }

    /** The first good status. */
    int goodStatus() {
      return told.path("responses").properties().stream()
          .map(Map.Entry::getKey)
          .filter(status -> status.matches("2\\d\\d"))
          .mapToInt(Integer::parseInt)
          .findFirst()
          .orElse(200);
    }

    /** Media types of the good answer. */
    List<String> forms() {
      return response(goodStatus())
          .map(
              told ->
                  told.path("content").properties().stream()
                      .map(Map.Entry::getKey)
                      .collect(Collectors.toList()))
          .orElse(List.of());
    }

    /** Whether what it makes is told as made. */
    boolean tellsWhatIsNew() {
      return told.path("responses").has("201");
    }

    /** Whether a change has to say which state it was made for. */
    boolean isConditional() {
      return told.path("responses").has("428");
    }

    /** Whether it can't be asked without a body. */
    boolean wantsABody() {
      return api.resolve(told.path("requestBody")).path("required").asBoolean();
    }

    boolean isDeprecated() {
      return told.path("deprecated").asBoolean();
    }

    /** Whether a caller without credentials is refused. */
    boolean isGuarded() {
      JsonNode security = told.has("security") ? told.get("security") : api.root.path("security");
      return !security.isEmpty() && security.valueStream().noneMatch(JsonNode::isEmpty);
    }
  }

  /** A parameter of an operation. */
  record Parameter(JsonNode told) {

    String name() {
      return told.path("name").asText();
    }

    String in() {
      return told.path("in").asText();
    }

    boolean required() {
      return told.path("required").asBoolean();
    }

    JsonNode schema() {
      return told.path("schema");
    }

    Map<String, JsonNode> examples() {
      Map<String, JsonNode> all = new LinkedHashMap<>();
      told.path("examples")
          .properties()
          .forEach(example -> all.put(example.getKey(), example.getValue().path("value")));
      return all;
    }
  }

  List<Operation> operations() {
    List<Operation> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : root.path("paths").properties()) {
      for (Map.Entry<String, JsonNode> entry : path.getValue().properties()) {
        if (entry.getValue().has("responses")) {
          String method = entry.getKey().toUpperCase(Locale.ROOT);
          all.add(new Operation(this, path.getKey(), method, entry.getValue()));
        }
      }
    }
    return all;
  }

  Optional<Operation> operation(String path, String method) {
    return operations().stream()
        .filter(operation -> operation.path().equals(path) && operation.method().equals(method))
        .findFirst();
  }

  /** The operation that a call goes to. */
  Optional<Operation> operationAt(String address, String method) {
    return operations().stream()
        .filter(operation -> operation.method().equals(method))
        .filter(operation -> address.matches(operation.path().replaceAll("\\{[^}]*}", "[^/]+")))
        .findFirst();
  }

  List<String> methodsOf(String path) {
    return operations().stream()
        .filter(operation -> operation.path().equals(path))
        .map(Operation::method)
        .toList();
  }

  /**
   * The node that a reference leads to; what stands beside the reference goes over it. Several that
   * are to hold all at once are one.
   */
  JsonNode resolve(JsonNode node) {
    JsonNode now = node;
    while (now.has("$ref")) {
      JsonNode target = root.at(now.get("$ref").asText().substring(1));
      if (now.size() == 1 || !target.isObject()) {
        now = target;
      } else {
        ObjectNode merged = target.deepCopy();
        now.properties()
            .forEach(
                member -> {
                  if (!member.getKey().equals("$ref")) {
                    merged.set(member.getKey(), member.getValue());
                  }
                });
        now = merged;
      }
    }
    return now.has("allOf") ? united(now) : now;
  }

  private JsonNode united(JsonNode schema) {
    ObjectNode all = JSON.createObjectNode();
    ObjectNode properties = JSON.createObjectNode();
    ArrayNode required = JSON.createArrayNode();
    List<JsonNode> parts = new ArrayList<>();
    schema.path("allOf").forEach(part -> parts.add(resolve(part)));
    parts.add(schema);
    for (JsonNode part : parts) {
      all.setAll((ObjectNode) part);
      part.path("properties").properties().forEach(m -> properties.set(m.getKey(), m.getValue()));
      part.path("required").forEach(required::add);
    }
    all.remove("allOf");
    if (!required.isEmpty()) {
      all.set("required", required);
    }
    return all.set("properties", properties);
  }

  /**
   * What is wrong with an instance under a schema of the description. An object has no member that
   * its schema does not name, unless the schema says that it may.
   */
  List<String> faults(JsonNode schema, JsonNode instance) {
    return compiled.computeIfAbsent(schema, this::compile).validate(instance).stream()
        .map(Object::toString)
        .toList();
  }

  /** The same of a body that the service reads. */
  List<String> faultsAsRead(JsonNode schema, JsonNode body) {
    return faults(schema, new AsRead(this).of(schema, body));
  }

  /** Whether a body has members that only the service sets. */
  boolean tellsReadOnly(JsonNode schema, JsonNode body) {
    AsRead reader = new AsRead(this);
    reader.of(schema, body);
    return reader.hasPassedOver();
  }

  private Schema compile(JsonNode schema) {
    ObjectNode whole = JSON.createObjectNode();
    whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    whole.setAll((ObjectNode) closed(schema));
    whole.putObject("components").set("schemas", closedSchemas);
    return registry.getSchema(whole);
  }

  private JsonNode closed(JsonNode given) {
    JsonNode schema = given.has("allOf") ? united(given) : given;
    if (schema instanceof ArrayNode list) {
      ArrayNode all = list.arrayNode();
      list.forEach(entry -> all.add(closed(entry)));
      return all;
    }
    if (!(schema instanceof ObjectNode)) {
      return schema;
    }
    ObjectNode copy = schema.deepCopy();
    for (String branches : List.of("oneOf", "anyOf", "items", "additionalProperties")) {
      if (copy.has(branches)) {
        copy.set(branches, closed(copy.get(branches)));
      }
    }
    if (copy.get("properties") instanceof ObjectNode properties) {
      properties.properties().forEach(member -> member.setValue(closed(member.getValue())));
      if (!copy.has("additionalProperties")) {
        copy.put("additionalProperties", false);
      }
    }
    return copy;
  }
}
