package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What to put where a schema stands: something that fits, and everything that might hurt. */
final class Values {
  private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);
  private static final int DEEP = 40;
  private static final int LONG_LIST = 2_000;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "x",
          "NaN",
          "null",
          "0",
          "core/kik",
          "core/kick/inside",
          "../../secret",
          "=1+1",
          "'; --",
          "<b>&amp;",
          "%s%n{0}",
          "\u0000",
          "\n\r\t",
          "\ud800",
          "e\u0301\u202e\ufeff",
          "🥁🎷",
          "ﬀİß",
          "x".repeat(9_000),
          "x".repeat(10_001));

  /** RFC 3339: some that are, some that are not. */
  private static final List<String> MOMENTS =
      List.of(
          "2027-06-11T08:00:00Z",
          "2027-06-11T08:00:00.123456789+14:00",
          "2027-06-11T08:00:00-12:00",
          "2028-02-29T23:59:59Z",
          "0001-01-01T00:00:00Z",
          "9999-12-31T23:59:59Z",
          "2027-02-29T08:00:00Z",
          "2027-06-11T24:00:01Z",
          "2027-06-11T08:00:00",
          "2027-06-11",
          "1812968400");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0.0",
          "1",
          "-1",
          "0.1",
          "3.0",
          "2.5",
          "1e-320",
          "1e-999",
          "1e308",
          "-1e308",
          "1e400",
          "-1e400",
          "2147483648",
          "9007199254740993",
          "9223372036854775808",
          "0.30000000000000004",
          "1e1000000",
          "12345678901234567890123456789012345678901234567890");

  private final Api api;

  Values(Api api) {
    this.api = api;
  }

  /** Whether a schema, or a branch of it, is of a type. */
  boolean isOf(JsonNode given, String type) {
    JsonNode schema = api.resolve(given);
    JsonNode told = schema.path("type");
    if (told.isArray()) {
      return told.valueStream().anyMatch(one -> one.asText().equals(type));
    }
    if (told.isTextual()) {
      return told.asText().equals(type);
    }
    return branches(schema).stream().anyMatch(branch -> isOf(branch, type));
  }

  List<JsonNode> branches(JsonNode schema) {
    List<JsonNode> all = new ArrayList<>();
    schema.path("oneOf").forEach(all::add);
    schema.path("anyOf").forEach(all::add);
    return all;
  }

  /** A small value that fits. */
  JsonNode sample(JsonNode given) {
    JsonNode schema = api.resolve(given);
    for (JsonNode shown :
        List.of(schema.path("examples").path(0), schema.path("example"), schema.path("default"))) {
      if (!shown.isMissingNode()) {
        return shown;
      }
    }
    if (schema.has("enum")) {
      return schema.path("enum").get(0);
    }
    List<JsonNode> branches = branches(schema);
    if (!branches.isEmpty()) {
      return sample(branches.get(0));
    }
    if (isOf(schema, "object")) {
      ObjectNode object = NODES.objectNode();
      for (JsonNode name : schema.path("required")) {
        object.set(name.asText(), sample(schema.path("properties").path(name.asText())));
      }
      return object;
    }
    if (isOf(schema, "array")) {
      ArrayNode list = NODES.arrayNode();
      int size = Math.max(1, schema.path("minItems").asInt());
      for (int i = 0; i < size; i++) {
        list.add(sample(schema.path("items")));
      }
      return list;
    }
    if (isOf(schema, "string")) {
      return NODES.textNode("x".repeat(Math.max(1, schema.path("minLength").asInt())));
    }
    if (isOf(schema, "boolean")) {
      return NODES.booleanNode(true);
    }
    return number(schema);
  }

  private static JsonNode number(JsonNode schema) {
    if (schema.has("minimum")) {
      return schema.get("minimum");
    }
    if (schema.has("exclusiveMinimum")) {
      return NODES.numberNode(schema.get("exclusiveMinimum").decimalValue().add(BigDecimal.ONE));
    }
    return NODES.numberNode(1);
  }

  /** What fits just so, what just doesn't, and what never should. */
  List<JsonNode> hostile(JsonNode given) {
    JsonNode schema = api.resolve(given);
    Set<JsonNode> all = new LinkedHashSet<>();
    all.add(NODES.nullNode());
    all.add(NODES.booleanNode(true));
    all.add(NODES.arrayNode());
    all.add(NODES.arrayNode().add(NODES.nullNode()));
    all.add(NODES.objectNode());
    all.add(NODES.objectNode().put("x", 1));
    all.add(NODES.textNode(""));
    all.add(NODES.textNode("x"));
    all.add(NODES.numberNode(0));
    all.add(NODES.numberNode(new BigDecimal("-1.5")));
    if (isOf(schema, "number") || isOf(schema, "integer")) {
      numbers(schema, all);
    }
    if (isOf(schema, "string")) {
      texts(schema, all);
    }
    if (isOf(schema, "boolean")) {
      all.add(NODES.booleanNode(false));
      all.add(NODES.textNode("true"));
      all.add(NODES.numberNode(1));
    }
    if (isOf(schema, "array")) {
      lists(schema, all);
    }
    if (isOf(schema, "object")) {
      objects(all);
      maps(schema, all);
    }
    return List.copyOf(all);
  }

  private static void numbers(JsonNode schema, Set<JsonNode> all) {
    NUMBERS.forEach(text -> all.add(NODES.numberNode(new BigDecimal(text))));
    all.add(NODES.textNode("1"));
    all.add(NODES.textNode("NaN"));
    all.add(NODES.textNode("Infinity"));
    all.add(NODES.arrayNode().add(1));
    boolean whole = schema.path("type").asText().equals("integer");
    for (String limit : List.of("minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum")) {
      if (schema.has(limit)) {
        BigDecimal at = schema.get(limit).decimalValue();
        BigDecimal step = whole ? BigDecimal.ONE : new BigDecimal("0.0001");
        all.add(whole ? NODES.numberNode(at.toBigInteger()) : NODES.numberNode(at));
        all.add(NODES.numberNode(at.add(step)));
        all.add(NODES.numberNode(at.subtract(step)));
      }
    }
  }

  private static void texts(JsonNode schema, Set<JsonNode> all) {
    TEXTS.forEach(text -> all.add(NODES.textNode(text)));
    all.add(NODES.arrayNode().add("x"));
    if (schema.path("format").asText().equals("date-time")) {
      MOMENTS.forEach(text -> all.add(NODES.textNode(text)));
    }
    for (String limit : List.of("minLength", "maxLength")) {
      if (schema.has(limit)) {
        int length = schema.get(limit).asInt();
        all.add(NODES.textNode("x".repeat(length)));
        all.add(NODES.textNode("é".repeat(length + 1)));
        all.add(NODES.textNode("x".repeat(Math.max(0, length - 1))));
      }
    }
    for (JsonNode value : schema.path("enum")) {
      all.add(value);
      all.add(NODES.textNode(value.asText().toUpperCase(Locale.ROOT) + "_"));
      all.add(NODES.textNode(value.asText() + "s"));
    }
  }

  private void lists(JsonNode schema, Set<JsonNode> all) {
    JsonNode one = sample(schema.path("items"));
    all.add(NODES.arrayNode().add(NODES.arrayNode().add(one)));
    all.add(one);
    for (String limit : List.of("minItems", "maxItems")) {
      if (schema.has(limit)) {
        int size = schema.get(limit).asInt();
        if (size > LONG_LIST) {
          continue;
        }
        all.add(copies(one, size));
        all.add(copies(one, size + 1));
        all.add(copies(one, Math.max(0, size - 1)));
      }
    }
    all.add(copies(NODES.nullNode(), LONG_LIST));
  }

  private static JsonNode copies(JsonNode one, int count) {
    ArrayNode list = NODES.arrayNode();
    for (int i = 0; i < count; i++) {
      list.add(one);
    }
    return list;
  }

  private void maps(JsonNode schema, Set<JsonNode> all) {
    JsonNode one = sample(schema.path("additionalProperties"));
    int most = schema.path("maxProperties").asInt(LONG_LIST + 1);
    if (most <= LONG_LIST) {
      all.add(named(most, one));
      all.add(named(most + 1, one));
    }
    int longest = schema.at("/propertyNames/maxLength").asInt();
    if (longest > 0) {
      all.add(NODES.objectNode().set("x".repeat(longest), one));
      all.add(NODES.objectNode().set("é".repeat(longest + 1), one));
    }
  }

  private static JsonNode named(int count, JsonNode one) {
    ObjectNode map = NODES.objectNode();
    for (int i = 0; i < count; i++) {
      map.set("x" + i, one);
    }
    return map;
  }

  private static void objects(Set<JsonNode> all) {
    JsonNode deep = NODES.objectNode();
    JsonNode nested = NODES.arrayNode();
    for (int i = 0; i < DEEP; i++) {
      deep = NODES.objectNode().set("x", deep);
      nested = NODES.arrayNode().add(nested);
    }
    all.add(deep);
    all.add(nested);
    ObjectNode wide = NODES.objectNode();
    for (int i = 0; i < LONG_LIST; i++) {
      wide.put("x" + i, i);
    }
    all.add(wide);
    all.add(NODES.objectNode().put("", 1).put("/~", 1).put("\u0000", 1).put("🥁", 1));
  }
}
