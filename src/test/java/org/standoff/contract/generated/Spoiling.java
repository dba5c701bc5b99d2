package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Every way to change a body at one place, led by its schema. */
final class Spoiling {
  private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

  /** Far enough to reach a list within a member of an entry of a list. */
  private static final int DEEPEST = 7;

  private static final int LONGEST_LABEL = 60;

  private final Api api;
  private final Values values;

  Spoiling(Api api) {
    this.api = api;
    this.values = new Values(api);
  }

  /**
   * One change.
   *
   * @param path names of members and indexes of entries
   * @param value what is put there; null where what is there is taken away
   * @param place the member that is tried, whichever entry of a list it is in; perhaps within what
   *     is put there
   */
  record Spoilt(List<Object> path, JsonNode value, String place) {

    Spoilt(List<Object> path, JsonNode value) {
      this(path, value, place(path));
    }

    /** The same within something that was not there. */
    Spoilt within(List<Object> above, JsonNode parent) {
      return new Spoilt(above, applyTo(parent), place(above) + place);
    }

    private static String place(List<Object> path) {
      StringBuilder pointer = new StringBuilder();
      path.forEach(step -> pointer.append('/').append(step instanceof String ? step : "-"));
      return pointer.toString();
    }

    JsonNode applyTo(JsonNode body) {
      return put(body, 0);
    }

    private JsonNode put(JsonNode at, int depth) {
      if (depth == path.size()) {
        return value;
      }
      Object step = path.get(depth);
      boolean last = depth == path.size() - 1;
      if (step instanceof String name) {
        ObjectNode object = at instanceof ObjectNode o ? o.deepCopy() : NODES.objectNode();
        if (last && value == null) {
          object.remove(name);
        } else {
          object.set(name, put(object.path(name), depth + 1));
        }
        return object;
      }
      ArrayNode list = at instanceof ArrayNode a ? a.deepCopy() : NODES.arrayNode();
      int index = (int) step;
      if (index >= list.size()) {
        list.add(put(NODES.missingNode(), depth + 1));
      } else if (last && value == null) {
        list.remove(index);
      } else {
        list.set(index, put(list.get(index), depth + 1));
      }
      return list;
    }

    String label() {
      StringBuilder pointer = new StringBuilder();
      path.forEach(step -> pointer.append('/').append(step));
      String shown = value == null ? "taken away" : value.toString();
      return pointer
          + " = "
          + (shown.length() > LONGEST_LABEL
              ? shown.substring(0, LONGEST_LABEL) + "… (" + shown.length() + ")"
              : shown);
    }
  }

  List<Spoilt> waysToSpoil(JsonNode schema, JsonNode body) {
    List<Spoilt> all = new ArrayList<>();
    collect(schema, body, List.of(), all, 0);
    return all;
  }

  private void collect(
      JsonNode given, JsonNode body, List<Object> path, List<Spoilt> all, int depth) {
    JsonNode schema = api.resolve(given);
    values.hostile(schema).forEach(value -> all.add(new Spoilt(path, value)));
    if (!path.isEmpty()) {
      all.add(new Spoilt(path, null));
    }
    if (depth == DEEPEST) {
      return;
    }
    for (JsonNode branch : branches(schema)) {
      if (branch.has("properties")) {
        members(branch, body, path, all, depth);
      } else if (branch.has("items")) {
        JsonNode list = body.isArray() && !body.isEmpty() ? body : values.sample(branch);
        within(branch.path("items"), list, 0, body.isArray(), path, all, depth);
      } else if (branch.path("additionalProperties").isObject()) {
        JsonNode map = body.isObject() && !body.isEmpty() ? body : sampleMap(branch);
        String name = map.fieldNames().next();
        within(branch.path("additionalProperties"), map, name, body.isObject(), path, all, depth);
      }
    }
  }

  private List<JsonNode> branches(JsonNode schema) {
    List<JsonNode> branches = values.branches(schema).stream().map(api::resolve).toList();
    return branches.isEmpty() ? List.of(schema) : branches;
  }

  private void members(
      JsonNode schema, JsonNode body, List<Object> path, List<Spoilt> all, int depth) {
    boolean there = body.isObject();
    JsonNode object = there ? body : values.sample(schema);
    for (Map.Entry<String, JsonNode> member : schema.path("properties").properties()) {
      within(member.getValue(), object, member.getKey(), there, path, all, depth);
    }
    for (String name : List.of("no_such_member", "", "🥁", "x".repeat(300))) {
      Spoilt extra = new Spoilt(List.of(name), NODES.numberNode(1));
      all.add(extra.within(path, object));
    }
  }

  /** What is not there yet is put there whole, with one thing wrong within. */
  private void within(
      JsonNode schema,
      JsonNode parent,
      Object step,
      boolean parentIsThere,
      List<Object> path,
      List<Spoilt> all,
      int depth) {
    JsonNode child = step instanceof String name ? parent.path(name) : parent.path((int) step);
    List<Object> below = new ArrayList<>(path);
    below.add(step);
    if (parentIsThere) {
      collect(schema, child, List.copyOf(below), all, depth + 1);
      return;
    }
    List<Spoilt> ways = new ArrayList<>();
    collect(schema, child, List.of(step), ways, depth + 1);
    ways.forEach(way -> all.add(way.within(path, parent)));
  }

  private JsonNode sampleMap(JsonNode schema) {
    return NODES.objectNode().set("x", values.sample(schema.path("additionalProperties")));
  }
}
