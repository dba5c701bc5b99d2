package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;

/** Finds numbers such as 1e999: well-formed JSON, but beyond what a binary64 number holds. */
final class InfiniteNumbers {

  private InfiniteNumbers() {}

  static List<Fault> in(JsonNode tree) {
    List<Fault> faults = new ArrayList<>();
    look(tree, JsonPointer.empty(), faults);
    return faults;
  }

  private static void look(JsonNode node, JsonPointer at, List<Fault> faults) {
    if (node.isDouble() && !Double.isFinite(node.doubleValue())) {
      faults.add(
          Fault.atPointer(at.toString(), FaultCode.OUT_OF_RANGE, "This number is too large.")
              .allowed("a binary64 number, up to about 1.8e308 either way"));
    }
    if (node.isObject()) {
      Iterator<Map.Entry<String, JsonNode>> members = node.fields();
      while (members.hasNext()) {
        Map.Entry<String, JsonNode> member = members.next();
        look(member.getValue(), at.appendProperty(member.getKey()), faults);
      }
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        look(node.get(i), at.appendIndex(i), faults);
      }
    }
  }
}
