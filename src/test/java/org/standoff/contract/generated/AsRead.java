package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A body as a reader takes it: a member that is null counts as left out, but not an entry of a map,
 * whose name is the caller's own; a member that is read-only is passed over, whatever it says
 * (OpenAPI 3.1, 4.8.24 leaves that to the service); and a number beyond all numbers is just very
 * large (a validator would divide it digit by digit).
 */
final class AsRead {
  private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);
  private static final BigDecimal BEYOND = new BigDecimal("1e400");

  private final Api api;
  private final Values values;
  private boolean passedOver;

  AsRead(Api api) {
    this.api = api;
    this.values = new Values(api);
  }

  /** Whether something was passed over that is read-only. */
  boolean hasPassedOver() {
    return passedOver;
  }

  JsonNode of(JsonNode schema, JsonNode node) {
    if (node.isNumber()) {
      return number(node);
    }
    List<JsonNode> forms = forms(api.resolve(schema));
    if (node instanceof ObjectNode object) {
      return members(forms, object);
    }
    if (node instanceof ArrayNode list) {
      JsonNode items = first(forms, "/items").orElse(NODES.missingNode());
      ArrayNode copy = NODES.arrayNode();
      list.forEach(entry -> copy.add(of(items, entry)));
      return copy;
    }
    return node;
  }

  private ObjectNode members(List<JsonNode> forms, ObjectNode object) {
    Optional<JsonNode> entries = first(forms, "/additionalProperties").filter(JsonNode::isObject);
    ObjectNode copy = NODES.objectNode();
    for (var member : object.properties()) {
      Optional<JsonNode> told =
          forms.stream()
              .map(form -> form.path("properties").path(member.getKey()))
              .filter(schema -> !schema.isMissingNode())
              .findFirst();
      boolean entryOfAMap = told.isEmpty() && entries.isPresent();
      if (told.filter(schema -> schema.path("readOnly").asBoolean()).isPresent()) {
        passedOver = true;
      } else if (entryOfAMap || !member.getValue().isNull()) {
        JsonNode schema = told.or(() -> entries).orElse(NODES.missingNode());
        copy.set(member.getKey(), of(schema, member.getValue()));
      }
    }
    return copy;
  }

  private List<JsonNode> forms(JsonNode schema) {
    return Stream.concat(Stream.of(schema), values.branches(schema).stream().map(api::resolve))
        .toList();
  }

  private static Optional<JsonNode> first(List<JsonNode> forms, String pointer) {
    return forms.stream()
        .map(form -> form.at(pointer))
        .filter(node -> !node.isMissingNode())
        .findFirst();
  }

  private static JsonNode number(JsonNode node) {
    BigDecimal exact = node.decimalValue();
    boolean beyond = exact.precision() - exact.scale() > BEYOND.precision() - BEYOND.scale();
    return beyond ? NODES.numberNode(exact.signum() < 0 ? BEYOND.negate() : BEYOND) : node;
  }
}
