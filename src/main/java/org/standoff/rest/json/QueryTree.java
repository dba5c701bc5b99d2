package org.standoff.rest.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;

/**
 * The query of a GET in the shape of the body that its POST twin takes; every value is still text.
 *
 * @param root the body
 * @param faults parameters that fit no body
 */
record QueryTree(ObjectNode root, List<Fault> faults) {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  static QueryTree of(MultivaluedMap<String, String> query, Set<String> elsewhere) {
    QueryTree tree = new QueryTree(NODES.objectNode(), new ArrayList<>());
    // in order of names a member comes before its own members
    for (Map.Entry<String, List<String>> parameter : new TreeMap<>(query).entrySet()) {
      if (!elsewhere.contains(parameter.getKey())) {
        tree.put(parameter.getKey(), value(parameter.getValue()));
      }
    }
    return tree;
  }

  /** The place of a fault as the parameter that it came from. */
  static Fault asParameter(Fault fault) {
    String name = fault.pointer().replaceAll("/\\d+", "").replaceFirst("^/", "").replace('/', '.');
    String named = name.replace("~1", "/").replace("~0", "~");
    return fault.asParameter(named);
  }

  private void put(String name, JsonNode value) {
    ObjectNode parent = root;
    String[] steps = name.split("\\.", -1);
    if (steps.length > JsonSetup.DEEPEST) {
      faults.add(Fault.ofParameter(name, FaultCode.UNKNOWN_NAME, "This name is nested too deep."));
      return;
    }
    for (int i = 0; i < steps.length - 1; i++) {
      JsonNode next = parent.get(steps[i]);
      if (next == null) {
        next = parent.putObject(steps[i]);
      }
      if (!(next instanceof ObjectNode object)) {
        faults.add(
            Fault.ofParameter(
                name,
                FaultCode.CONTRADICTION,
                "'" + steps[i] + "' is given as a whole too; give it whole or by its members."));
        return;
      }
      parent = object;
    }
    parent.set(steps[steps.length - 1], value);
  }

  private static JsonNode value(List<String> texts) {
    if (texts.size() == 1) {
      return NODES.textNode(texts.get(0));
    }
    ArrayNode list = NODES.arrayNode();
    texts.forEach(list::add);
    return list;
  }
}
