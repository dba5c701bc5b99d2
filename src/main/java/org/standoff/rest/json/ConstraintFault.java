package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.ProblemMember;

/** Says in the caller's words which constraint of a record its request breaks. */
final class ConstraintFault {

  private static final PropertyNamingStrategies.SnakeCaseStrategy NAMES =
      new PropertyNamingStrategies.SnakeCaseStrategy();

  /** Constraints not listed here compare members with each other. */
  private static final Map<String, FaultCode> CODES =
      Map.ofEntries(
          Map.entry("NotNull", FaultCode.MISSING),
          Map.entry("NotEmpty", FaultCode.MISSING),
          Map.entry("NotBlank", FaultCode.MISSING),
          Map.entry("Min", FaultCode.OUT_OF_RANGE),
          Map.entry("Max", FaultCode.OUT_OF_RANGE),
          Map.entry("DecimalMin", FaultCode.OUT_OF_RANGE),
          Map.entry("DecimalMax", FaultCode.OUT_OF_RANGE),
          Map.entry("Positive", FaultCode.OUT_OF_RANGE),
          Map.entry("PositiveOrZero", FaultCode.OUT_OF_RANGE),
          Map.entry("Negative", FaultCode.OUT_OF_RANGE),
          Map.entry("NegativeOrZero", FaultCode.OUT_OF_RANGE),
          Map.entry("Digits", FaultCode.OUT_OF_RANGE),
          Map.entry("Size", FaultCode.WRONG_LENGTH),
          Map.entry("Pattern", FaultCode.WRONG_FORM));

  private ConstraintFault() {}

  static Fault of(ConstraintViolation<?> violation) {
    String constraint =
        violation.getConstraintDescriptor().getAnnotation().annotationType().getSimpleName();
    FaultCode code = CODES.getOrDefault(constraint, FaultCode.CONTRADICTION);
    JsonPointer pointer = pointer(violation.getPropertyPath());
    Fault fault =
        Fault.atPointer(
                pointer.toString(), code, name(pointer) + " " + violation.getMessage() + ".")
            .allowed(allowed(constraint, violation));
    for (Map.Entry<ProblemMember, Object> bound : bounds(constraint, violation).entrySet()) {
      fault = fault.with(bound.getKey(), bound.getValue());
    }
    return code == FaultCode.CONTRADICTION
        ? fault
        : fault.found(found(violation.getInvalidValue()));
  }

  private static String name(JsonPointer pointer) {
    if (pointer.matches()) {
      return "The request";
    }
    return pointer.last().mayMatchElement()
        ? "This entry"
        : "'" + pointer.last().getMatchingProperty() + "'";
  }

  /** A list or a map that is too long is told by its length. */
  private static @Nullable Object found(@Nullable Object value) {
    Integer entries = entries(value);
    return entries == null ? value : entries + " entries";
  }

  private static @Nullable Integer entries(@Nullable Object value) {
    if (value instanceof Map<?, ?> map) {
      return map.size();
    }
    return value instanceof Collection<?> list ? list.size() : null;
  }

  private static @Nullable String allowed(String constraint, ConstraintViolation<?> violation) {
    Map<String, Object> attributes = violation.getConstraintDescriptor().getAttributes();
    boolean inclusive = !Boolean.FALSE.equals(attributes.get("inclusive"));
    return switch (constraint) {
      case "Min", "DecimalMin" ->
          (inclusive ? "at least " : "more than ") + attributes.get("value");
      case "Max", "DecimalMax" -> (inclusive ? "at most " : "less than ") + attributes.get("value");
      case "Positive" -> "more than 0";
      case "PositiveOrZero" -> "at least 0";
      case "Negative" -> "less than 0";
      case "NegativeOrZero" -> "at most 0";
      case "Size" ->
          attributes.get("min")
              + " to "
              + attributes.get("max")
              + (entries(violation.getInvalidValue()) == null ? " characters" : " entries");
      case "Digits" ->
          attributes.get("integer")
              + " digits before the point and "
              + attributes.get("fraction")
              + " after it at most";
      case "Pattern" -> String.valueOf(attributes.get("regexp"));
      default -> null;
    };
  }

  private static Map<ProblemMember, Object> bounds(
      String constraint, ConstraintViolation<?> violation) {
    Map<String, Object> attributes = violation.getConstraintDescriptor().getAttributes();
    boolean inclusive = !Boolean.FALSE.equals(attributes.get("inclusive"));
    return switch (constraint) {
      case "Min", "DecimalMin" ->
          Map.of(
              inclusive ? ProblemMember.MINIMUM : ProblemMember.EXCLUSIVE_MINIMUM,
              new BigDecimal(attributes.get("value").toString()));
      case "Max", "DecimalMax" ->
          Map.of(
              inclusive ? ProblemMember.MAXIMUM : ProblemMember.EXCLUSIVE_MAXIMUM,
              new BigDecimal(attributes.get("value").toString()));
      case "Positive" -> Map.of(ProblemMember.EXCLUSIVE_MINIMUM, 0);
      case "PositiveOrZero" -> Map.of(ProblemMember.MINIMUM, 0);
      case "Negative" -> Map.of(ProblemMember.EXCLUSIVE_MAXIMUM, 0);
      case "NegativeOrZero" -> Map.of(ProblemMember.MAXIMUM, 0);
      case "Size" ->
          Map.of(
              ProblemMember.MINIMUM, attributes.get("min"),
              ProblemMember.MAXIMUM, attributes.get("max"));
      default -> Map.of();
    };
  }

  private static JsonPointer pointer(Path path) {
    JsonPointer pointer = JsonPointer.empty();
    for (Path.Node step : path) {
      if (step.getIndex() != null) {
        pointer = pointer.appendIndex(step.getIndex());
      } else if (step.getKey() != null) {
        pointer = pointer.appendProperty(step.getKey().toString());
      }
      if (step.getKind() == ElementKind.PROPERTY) {
        pointer = pointer.appendProperty(NAMES.translate(step.getName()));
      }
    }
    return pointer;
  }
}
