package org.standoff.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a description takes away from those who rely on an earlier one (AIP-180): operations,
 * parameters, answers and members that go; wishes that are new; ranges of what is sent that grow
 * narrower; types of what is answered that change. What is merely added breaks nobody.
 */
final class Compatibility {
  private static final Set<String> SMALLEST =
      Set.of("minimum", "exclusiveMinimum", "minLength", "minItems", "minProperties");
  private static final Set<String> LARGEST =
      Set.of("maximum", "exclusiveMaximum", "maxLength", "maxItems", "maxProperties");

  private final JsonNode before;
  private final JsonNode after;
  private final List<String> broken = new ArrayList<>();
  private final Set<String> compared = new HashSet<>();

  private Compatibility(JsonNode before, JsonNode after) {
    this.before = before;
    this.after = after;
  }

  /** A line for each promise of the first description that the second does not keep. */
  static List<String> broken(JsonNode before, JsonNode after) {
    Compatibility compatibility = new Compatibility(before, after);
    before
        .path("paths")
        .properties()
        .forEach(path -> compatibility.path(path.getKey(), path.getValue()));
    return compatibility.broken;
  }

  private void path(String path, JsonNode old) {
    JsonNode now = after.path("paths").path(path);
    for (Map.Entry<String, JsonNode> entry : old.properties()) {
      if (entry.getValue().has("responses")) {
        String where = entry.getKey().toUpperCase(Locale.ROOT) + " " + path;
        JsonNode operation = now.path(entry.getKey());
        if (operation.isMissingNode()) {
          broken.add(where + " is gone");
        } else {
          operation(where, entry.getValue(), operation);
        }
      }
    }
  }

  private void operation(String where, JsonNode old, JsonNode now) {
    if (!old.path("operationId").equals(now.path("operationId"))) {
      broken.add(where + ": operationId was " + old.path("operationId").asText());
    }
    parameters(where, old, now);
    JsonNode oldBody = resolved(before, old.path("requestBody"));
    JsonNode body = resolved(after, now.path("requestBody"));
    for (Map.Entry<String, JsonNode> type : oldBody.path("content").properties()) {
      String at = where + " " + type.getKey();
      JsonNode taken = body.path("content").path(type.getKey());
      if (taken.isMissingNode()) {
        broken.add(at + " is no longer taken");
      } else {
        sent(at, type.getValue().path("schema"), taken.path("schema"));
      }
    }
    if (!oldBody.path("required").asBoolean() && body.path("required").asBoolean()) {
      broken.add(where + " wants a body");
    }
    if (!isGuarded(before, old) && isGuarded(after, now)) {
      broken.add(where + " wants a token");
    }
    answers(where, old.path("responses"), now.path("responses"));
  }

  /** Whether nobody may ask without saying who they are. */
  private static boolean isGuarded(JsonNode root, JsonNode operation) {
    JsonNode security =
        operation.has("security") ? operation.path("security") : root.path("security");
    return !security.isEmpty() && security.valueStream().noneMatch(JsonNode::isEmpty);
  }

  private void parameters(String where, JsonNode old, JsonNode now) {
    Map<String, JsonNode> earlier = parameters(before, old);
    Map<String, JsonNode> later = parameters(after, now);
    earlier.forEach(
        (name, parameter) -> {
          JsonNode there = later.get(name);
          String at = where + " " + name;
          if (there == null) {
            broken.add(at + " is gone");
            return;
          }
          if (!parameter.path("required").asBoolean() && there.path("required").asBoolean()) {
            broken.add(at + " is wanted now");
          }
          sent(at, parameter.path("schema"), there.path("schema"));
        });
    later.forEach(
        (name, parameter) -> {
          if (!earlier.containsKey(name) && parameter.path("required").asBoolean()) {
            broken.add(where + " " + name + " is wanted and new");
          }
        });
  }

  private static Map<String, JsonNode> parameters(JsonNode root, JsonNode operation) {
    Map<String, JsonNode> all = new LinkedHashMap<>();
    for (JsonNode given : operation.path("parameters")) {
      JsonNode parameter = resolved(root, given);
      all.put(parameter.path("in").asText() + " " + parameter.path("name").asText(), parameter);
    }
    return all;
  }

  private void answers(String where, JsonNode old, JsonNode now) {
    for (Map.Entry<String, JsonNode> status : old.properties()) {
      JsonNode response = resolved(after, now.path(status.getKey()));
      if (now.has(status.getKey())) {
        headers(where + " " + status.getKey(), resolved(before, status.getValue()), response);
      }
      if (!status.getKey().startsWith("2")) {
        continue;
      }
      for (Map.Entry<String, JsonNode> type :
          resolved(before, status.getValue()).path("content").properties()) {
        String at = where + " " + status.getKey() + " " + type.getKey();
        JsonNode given = response.path("content").path(type.getKey());
        if (given.isMissingNode()) {
          broken.add(at + " is no longer given");
        } else {
          answered(at, type.getValue().path("schema"), given.path("schema"));
        }
      }
      if (now.path(status.getKey()).isMissingNode()) {
        broken.add(where + " " + status.getKey() + " is gone");
      }
    }
  }

  private void headers(String where, JsonNode old, JsonNode now) {
    for (Map.Entry<String, JsonNode> header : old.path("headers").properties()) {
      JsonNode given = now.path("headers").path(header.getKey());
      String at = where + " header " + header.getKey();
      if (given.isMissingNode()) {
        broken.add(at + " is gone");
        continue;
      }
      JsonNode earlier = resolved(before, header.getValue());
      JsonNode later = resolved(after, given);
      if (earlier.path("required").asBoolean() && !later.path("required").asBoolean()) {
        broken.add(at + " may be lacking");
      }
      answered(at, earlier.path("schema"), later.path("schema"));
    }
  }

  /** What was taken must still be taken. */
  private void sent(String at, JsonNode oldGiven, JsonNode nowGiven) {
    if (isKnown("sent", oldGiven, nowGiven)) {
      return;
    }
    JsonNode old = resolved(before, oldGiven);
    JsonNode now = resolved(after, nowGiven);
    Set<String> types = types(old);
    if (!types(now).containsAll(types)) {
      broken.add(at + " was " + types + " and is " + types(now));
    }
    Set<String> words = texts(old.path("enum"));
    if (now.has("enum") && (!old.has("enum") || !texts(now.path("enum")).containsAll(words))) {
      broken.add(at + " takes fewer words");
    }
    if (now.has("pattern") && !now.path("pattern").equals(old.path("pattern"))) {
      broken.add(at + " has another pattern");
    }
    SMALLEST.forEach(limit -> narrower(at, limit, old, now, 1));
    LARGEST.forEach(limit -> narrower(at, limit, old, now, -1));
    if (now.has("propertyNames")) {
      sent(at + " (names)", old.path("propertyNames"), now.path("propertyNames"));
    }
    Set<String> wanted = texts(now.path("required"));
    wanted.removeAll(texts(old.path("required")));
    if (!wanted.isEmpty()) {
      broken.add(at + " wants " + wanted);
    }
    for (Map.Entry<String, JsonNode> member : old.path("properties").properties()) {
      JsonNode there = now.path("properties").path(member.getKey());
      if (there.isMissingNode()) {
        broken.add(at + "/" + member.getKey() + " is gone");
      } else {
        sent(at + "/" + member.getKey(), member.getValue(), there);
      }
    }
    within(at, old, now, this::sent);
    branches(at, old, now, this::sent);
  }

  private void narrower(String at, String limit, JsonNode old, JsonNode now, int sign) {
    if (now.has(limit)) {
      BigDecimal present = now.path(limit).decimalValue();
      boolean narrower =
          !old.has(limit) || present.compareTo(old.path(limit).decimalValue()) * sign > 0;
      if (narrower) {
        broken.add(at + " " + limit + " is " + present);
      }
    }
  }

  /** What was given must still be given, in the same form; more may be. */
  private void answered(String at, JsonNode oldGiven, JsonNode nowGiven) {
    if (isKnown("answered", oldGiven, nowGiven)) {
      return;
    }
    JsonNode old = resolved(before, oldGiven);
    JsonNode now = resolved(after, nowGiven);
    if (!types(old).containsAll(types(now))) {
      broken.add(at + " was " + types(old) + " and is " + types(now));
    }
    Set<String> promised = texts(old.path("required"));
    promised.removeAll(texts(now.path("required")));
    if (!promised.isEmpty()) {
      broken.add(at + " may lack " + promised);
    }
    for (Map.Entry<String, JsonNode> member : old.path("properties").properties()) {
      JsonNode there = now.path("properties").path(member.getKey());
      if (there.isMissingNode()) {
        broken.add(at + "/" + member.getKey() + " is gone");
      } else {
        answered(at + "/" + member.getKey(), member.getValue(), there);
      }
    }
    within(at, old, now, this::answered);
    branches(at, old, now, this::answered);
  }

  private interface Comparison {
    void compare(String at, JsonNode old, JsonNode now);
  }

  private static void within(String at, JsonNode old, JsonNode now, Comparison comparison) {
    for (String part : List.of("items", "additionalProperties")) {
      if (old.path(part).isObject() && now.path(part).isObject()) {
        comparison.compare(at + "/*", old.path(part), now.path(part));
      }
    }
  }

  /** Choices are compared in their order; one that goes is told by its place. */
  private void branches(String at, JsonNode old, JsonNode now, Comparison comparison) {
    for (String part : List.of("oneOf", "anyOf", "allOf")) {
      for (int i = 0; i < old.path(part).size(); i++) {
        if (now.path(part).has(i)) {
          comparison.compare(at + "(" + i + ")", old.path(part).get(i), now.path(part).get(i));
        } else {
          broken.add(at + " has no choice " + i + " of " + part);
        }
      }
    }
  }

  private boolean isKnown(String way, JsonNode old, JsonNode now) {
    return old.has("$ref")
        && now.has("$ref")
        && !compared.add(way + old.path("$ref").asText() + " " + now.path("$ref").asText());
  }

  private static JsonNode resolved(JsonNode root, JsonNode node) {
    JsonNode now = node;
    while (now.has("$ref")) {
      now = root.at(now.path("$ref").asText().substring(1));
    }
    return now;
  }

  private static Set<String> types(JsonNode schema) {
    JsonNode type = schema.path("type");
    return type.isTextual() ? new TreeSet<>(Set.of(type.asText())) : texts(type);
  }

  private static Set<String> texts(JsonNode list) {
    Set<String> all = new TreeSet<>();
    list.forEach(entry -> all.add(entry.asText()));
    return all;
  }
}
