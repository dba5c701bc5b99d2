package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.NearMiss;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;

/** Says in the caller's words why a member could not be read. */
final class MappingFault {

  private MappingFault() {}

  static Fault of(JsonMappingException refused, JsonNode tree) {
    JsonPointer pointer = pointer(refused.getPath());
    JsonNode found = tree.at(pointer);
    if (refused instanceof UnrecognizedPropertyException unknown) {
      return unknownName(pointer, unknown);
    }
    if (refused instanceof OtherThanAddressed other) {
      return at(pointer, FaultCode.CONTRADICTION, other.getOriginalMessage(), found)
          .allowed(other.addressed());
    }
    if (refused instanceof ValueInstantiationException
        && refused.getCause() instanceof IllegalArgumentException reason) {
      return at(pointer, FaultCode.CONTRADICTION, reason.getMessage(), found);
    }
    Class<?> wanted =
        refused instanceof MismatchedInputException mismatch ? mismatch.getTargetType() : null;
    if (found.isNull()) {
      return at(pointer, FaultCode.MISSING, "A value is wanted here.", found)
          .allowed(words(wanted));
    }
    if (wanted != null && wanted.isEnum() && found.isTextual()) {
      return unknownValue(pointer, found, wanted);
    }
    if (found.isArray() && wanted != null && isScalar(wanted)) {
      return at(pointer, FaultCode.WRONG_TYPE, "One value is wanted here, not several.", found)
          .allowed(words(wanted));
    }
    return at(pointer, FaultCode.WRONG_TYPE, "This is not " + words(wanted) + ".", found)
        .allowed(words(wanted));
  }

  private static Fault at(JsonPointer pointer, FaultCode code, String detail, JsonNode found) {
    return Fault.atPointer(pointer.toString(), code, detail)
        .found(found.isValueNode() ? found.asText() : found);
  }

  private static Fault unknownName(JsonPointer pointer, UnrecognizedPropertyException unknown) {
    Collection<String> known =
        unknown.getKnownPropertyIds().stream().map(String::valueOf).sorted().toList();
    String name = unknown.getPropertyName();
    return Fault.atPointer(
            pointer.toString(), FaultCode.UNKNOWN_NAME, "There is no member of this name here.")
        .found(name)
        .allowed(String.join(", ", known))
        .suggestion(NearMiss.of(name, known).orElse(null));
  }

  private static Fault unknownValue(JsonPointer pointer, JsonNode found, Class<?> wanted) {
    List<String> known =
        Arrays.stream(wanted.getEnumConstants())
            .map(constant -> EnumSpelling.of(((Enum<?>) constant).name()))
            .toList();
    return at(pointer, FaultCode.UNKNOWN_VALUE, "This value is none of those allowed.", found)
        .allowed(String.join(", ", known))
        .suggestion(NearMiss.of(found.asText(), known).orElse(null));
  }

  private static boolean isScalar(Class<?> type) {
    return type.isPrimitive()
        || Number.class.isAssignableFrom(type)
        || type == String.class
        || type == Boolean.class
        || type == Instant.class
        || type.isEnum();
  }

  /** What a Java type is called in JSON. */
  private static String words(@Nullable Class<?> type) {
    if (type == null) {
      return "a value of the right form";
    }
    if (type == Integer.class || type == int.class || type == Long.class || type == long.class) {
      return "a whole number";
    }
    if (Number.class.isAssignableFrom(type) || type == double.class) {
      return "a number";
    }
    if (type == Boolean.class || type == boolean.class) {
      return "true or false";
    }
    if (type == String.class || type.isEnum()) {
      return "a text";
    }
    if (type == Instant.class) {
      return "a moment as in RFC 3339, such as 2027-06-11T10:00:00+02:00";
    }
    return Collection.class.isAssignableFrom(type) || type.isArray() ? "a list" : "an object";
  }

  private static JsonPointer pointer(List<JsonMappingException.Reference> path) {
    JsonPointer pointer = JsonPointer.empty();
    for (JsonMappingException.Reference step : path) {
      pointer =
          step.getFieldName() != null
              ? pointer.appendProperty(step.getFieldName())
              : pointer.appendIndex(step.getIndex());
    }
    return pointer;
  }
}
