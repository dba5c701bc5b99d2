package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.validation.Validator;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/**
 * Makes a record of a tree and collects every fault on the way. The reader stops at the first
 * fault, so the faulty member is noted, taken out, and the rest is read again; a request without
 * faults is read once.
 */
final class Binding {

  /** More would help nobody. */
  private static final int MOST_FAULTS = 100;

  private final ObjectMapper json;
  private final Validator validator;

  Binding(ObjectMapper json, Validator validator) {
    this.json = json;
    this.validator = validator;
  }

  /**
   * @param addressed what the address tells, by the read-only member that tells the same
   */
  <T> T bind(JsonNode given, Class<T> type, Map<String, String> addressed) {
    ObjectReader reader = json.reader().withHandler(new ReadOnlyMembers(addressed));
    Map<String, Fault> faults = new LinkedHashMap<>();
    InfiniteNumbers.in(given).forEach(fault -> faults.put(fault.pointer(), fault));
    JsonNode tree = given;
    if (!faults.isEmpty()) {
      tree = given.deepCopy();
      for (String pointer : faults.keySet()) {
        takeOut(tree, JsonPointer.compile(pointer));
      }
    }
    Optional<T> bound = bind(tree, type, reader, faults);
    bound.ifPresent(
        value ->
            validator.validate(value).stream()
                .map(ConstraintFault::of)
                .filter(fault -> faults.keySet().stream().noneMatch(at -> covers(at, fault)))
                .sorted(Comparator.comparing(Fault::pointer))
                .limit(MOST_FAULTS)
                .forEach(fault -> faults.putIfAbsent(fault.pointer() + fault.code(), fault)));
    if (!faults.isEmpty()) {
      throw new InvalidRequest(List.copyOf(faults.values()));
    }
    return bound.orElseThrow();
  }

  private static <T> Optional<T> bind(
      JsonNode given, Class<T> type, ObjectReader reader, Map<String, Fault> faults) {
    JsonNode tree = given;
    boolean ours = false;
    while (faults.size() < MOST_FAULTS) {
      try {
        T value = reader.treeToValue(tree, type);
        if (value == null) {
          faults.put("", Fault.atPointer("", FaultCode.MISSING, "A JSON object is wanted here."));
        }
        return Optional.ofNullable(value);
      } catch (JsonMappingException refused) {
        Fault fault = MappingFault.of(refused, tree);
        boolean again = faults.putIfAbsent(fault.pointer(), fault) != null;
        if (again || fault.pointer().isEmpty()) {
          return Optional.empty();
        }
        if (!ours) {
          tree = given.deepCopy();
          ours = true;
        }
        takeOut(tree, JsonPointer.compile(fault.pointer()));
      } catch (JsonProcessingException impossible) {
        throw new IllegalStateException("A tree is well-formed", impossible);
      }
    }
    return Optional.empty();
  }

  private static void takeOut(JsonNode tree, JsonPointer pointer) {
    JsonNode parent = tree.at(pointer.head());
    JsonPointer last = pointer.last();
    if (parent instanceof ObjectNode object) {
      object.remove(last.getMatchingProperty());
    } else if (parent instanceof ArrayNode list) {
      list.set(last.getMatchingIndex(), NullNode.getInstance());
    }
  }

  /** What was taken out, or lacks a part that was, is not told to be missing as well. */
  private static boolean covers(String faulty, Fault fault) {
    return fault.pointer().equals(faulty) || fault.pointer().startsWith(faulty + "/");
  }
}
