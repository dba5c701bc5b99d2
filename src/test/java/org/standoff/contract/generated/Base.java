package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A good request to an operation, from an example of the description.
 *
 * @param name of the example
 * @param path values of path parameters
 * @param query values of query parameters, each perhaps several times
 * @param headers values of header parameters
 * @param mediaType of the body; null without one
 * @param body null without one
 */
record Base(
    Api.Operation operation,
    String name,
    Map<String, String> path,
    Map<String, List<String>> query,
    Map<String, String> headers,
    String mediaType,
    JsonNode body) {
  private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);
  private static final String UNRESERVED =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

  /** Every example, in the place that is ours; of an operation that shows none, its bare form. */
  static List<Base> of(Api.Operation operation, Values values, Credentials credentials) {
    List<Base> all = new ArrayList<>();
    Set<String> names = new TreeSet<>();
    operation.parameters().forEach(parameter -> names.addAll(parameter.examples().keySet()));
    if (operation.bodies().isEmpty()) {
      for (String name : names.isEmpty() ? Set.of("") : names) {
        all.add(of(operation, name, values, credentials, null, null));
      }
      return all;
    }
    operation
        .bodies()
        .forEach(
            (type, told) -> {
              told.path("examples")
                  .properties()
                  .forEach(
                      example ->
                          all.add(
                              of(
                                  operation,
                                  example.getKey(),
                                  values,
                                  credentials,
                                  type,
                                  example.getValue().path("value"))));
              if (!told.has("examples")) {
                JsonNode body =
                    told.has("example") ? told.get("example") : values.sample(told.path("schema"));
                all.add(of(operation, "", values, credentials, type, body));
              }
            });
    return all;
  }

  private static Base of(
      Api.Operation operation,
      String example,
      Values values,
      Credentials credentials,
      String mediaType,
      JsonNode body) {
    Map<String, String> path = new LinkedHashMap<>();
    Map<String, List<String>> query = new LinkedHashMap<>();
    Map<String, String> headers = new LinkedHashMap<>();
    Map<String, String> names = credentials.names();
    for (Api.Parameter parameter : operation.parameters()) {
      JsonNode shown = parameter.examples().get(example);
      if (shown == null && parameter.in().equals("header") && parameter.told().has("example")) {
        shown = parameter.told().get("example");
      }
      if (shown == null && parameter.required()) {
        shown =
            parameter.examples().isEmpty()
                ? parameter.told().path("example")
                : parameter.examples().values().iterator().next();
        if (shown.isMissingNode()) {
          shown = values.sample(parameter.schema());
        }
      }
      if (shown == null) {
        continue;
      }
      switch (parameter.in()) {
        case "path" -> path.put(parameter.name(), renamed(shown.asText(), names));
        case "query" -> query.put(parameter.name(), texts(shown));
        case "header" -> headers.put(parameter.name(), shown.asText());
        default -> throw new IllegalArgumentException("parameter in " + parameter.in());
      }
    }
    query.replaceAll((name, texts) -> texts.stream().map(text -> renamed(text, names)).toList());
    JsonNode own = body == null ? null : renamed(body, names);
    return new Base(operation, example, path, query, headers, mediaType, own);
  }

  static List<String> texts(JsonNode value) {
    return value.isArray() ? value.valueStream().map(Base::text).toList() : List.of(text(value));
  }

  private static String text(JsonNode value) {
    return value.isValueNode() ? value.asText() : value.toString();
  }

  /** A name of the address may stand in the body too, and one name within another. */
  static JsonNode renamed(JsonNode node, Map<String, String> names) {
    if (node.isTextual()) {
      return NODES.textNode(renamed(node.asText(), names));
    }
    if (node instanceof ObjectNode object) {
      ObjectNode copy = NODES.objectNode();
      object.properties().forEach(m -> copy.set(m.getKey(), renamed(m.getValue(), names)));
      return copy;
    }
    if (node instanceof ArrayNode list) {
      ArrayNode copy = NODES.arrayNode();
      list.forEach(entry -> copy.add(renamed(entry, names)));
      return copy;
    }
    return node;
  }

  private static String renamed(String text, Map<String, String> names) {
    return names.keySet().stream()
        .sorted(Comparator.comparing(String::length).reversed())
        .filter(text::contains)
        .findFirst()
        .map(old -> text.replace(old, names.get(old)))
        .orElse(text);
  }

  Base withPath(String parameter, String value) {
    Map<String, String> other = new LinkedHashMap<>(path);
    other.put(parameter, value);
    return new Base(operation, name, other, query, headers, mediaType, body);
  }

  /** Without the parameter where the values are null. */
  Base withQuery(String parameter, List<String> values) {
    Map<String, List<String>> other = new LinkedHashMap<>(query);
    if (values == null) {
      other.remove(parameter);
    } else {
      other.put(parameter, values);
    }
    return new Base(operation, name, path, other, headers, mediaType, body);
  }

  /** With those parameters of the query alone that say what the other request says too. */
  Base withQueryAsIn(JsonNode other) {
    Map<String, List<String>> shared = new LinkedHashMap<>(query);
    shared.values().removeIf(texts -> !texts.stream().allMatch(text -> isIn(other, text)));
    return new Base(operation, name, path, shared, headers, mediaType, body);
  }

  private static boolean isIn(JsonNode node, String text) {
    return node.isContainerNode()
        ? node.valueStream().anyMatch(below -> isIn(below, text))
        : node.asText().equals(text);
  }

  Base withHeader(String parameter, String value) {
    Map<String, String> other = new LinkedHashMap<>(headers);
    if (value == null) {
      other.remove(parameter);
    } else {
      other.put(parameter, value);
    }
    return new Base(operation, name, path, query, other, mediaType, body);
  }

  Base withBody(JsonNode other) {
    return new Base(operation, name, path, query, headers, mediaType, other);
  }

  String target() {
    String target = operation.path();
    for (Map.Entry<String, String> parameter : path.entrySet()) {
      target = target.replace("{" + parameter.getKey() + "}", encoded(parameter.getValue(), ""));
    }
    StringBuilder whole = new StringBuilder(target);
    char next = '?';
    for (Map.Entry<String, List<String>> parameter : query.entrySet()) {
      for (String value : parameter.getValue()) {
        whole.append(next).append(encoded(parameter.getKey(), "")).append('=');
        whole.append(encoded(value, "/,:"));
        next = '&';
      }
    }
    return whole.toString();
  }

  Call call() {
    Map<String, String> all = new LinkedHashMap<>(headers);
    if (mediaType != null) {
      all.put("Content-Type", mediaType);
    }
    all.put("Accept", accepted());
    byte[] bytes = body == null ? null : text().getBytes(StandardCharsets.UTF_8);
    return new Call(operation.method(), target(), all, bytes);
  }

  /** Whether the body is a text of its own form. */
  boolean isSheet() {
    return body != null && body.isTextual() && !mediaType.endsWith("json");
  }

  /** The body as it is sent: a sheet is no string of JSON. */
  String text() {
    return isSheet() ? body.asText() : Texts.of(body);
  }

  /** Lines are answered by lines; all else has JSON, or a single form of its own. */
  private String accepted() {
    List<String> forms = operation.forms();
    if (forms.contains("application/x-ndjson") && "application/x-ndjson".equals(mediaType)) {
      return mediaType;
    }
    if (forms.isEmpty()) {
      return "*/*";
    }
    return forms.contains("application/json") ? "application/json" : forms.get(0);
  }

  private static String encoded(String text, String alsoPlain) {
    StringBuilder out = new StringBuilder();
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xff);
      if (UNRESERVED.indexOf(c) >= 0 || alsoPlain.indexOf(c) >= 0) {
        out.append(c);
      } else {
        out.append('%').append(String.format("%02X", (int) c));
      }
    }
    return out.toString();
  }
}
