package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.NearMiss;

/** Checks a tree against a JSON Schema, compiled once, and says what is wrong in our own words. */
final class SchemaCheck {

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private final JsonNode root;
  private final Schema schema;

  private SchemaCheck(JsonNode root) {
    this.root = root;
    this.schema = REGISTRY.getSchema(root);
    schema.initializeValidators();
  }

  /** The schema of a kind. */
  static SchemaCheck of(CatalogueKind<?> kind) {
    return of(kind.schemaResource(), kind.getClass().getClassLoader());
  }

  /**
   * @param resource path of the schema on the class path
   * @param loader of the classes that bring it
   */
  static SchemaCheck of(String resource, ClassLoader loader) {
    try (InputStream in = loader.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("There is no schema " + resource + " on the class path");
      }
      return new SchemaCheck(new ObjectMapper().readTree(in));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** All faults, in the order of the schema. */
  List<ReadFault> faults(JsonNode content, Lines lines) {
    List<ReadFault> faults = new ArrayList<>();
    for (Error error : schema.validate(content)) {
      // what a conditional schema adds is told at its own place; the shell says nothing more
      if (!error.getKeyword().equals("if")) {
        faults.add(told(error, lines));
      }
    }
    return faults;
  }

  private ReadFault told(Error error, Lines lines) {
    String holder = error.getInstanceLocation().toString();
    JsonNode rule = error.getSchemaNode();
    return switch (error.getKeyword()) {
      case "required" ->
          new ReadFault(
              lines.of(holder), holder, "nothing", "'" + error.getProperty() + "' must be there");
      case "additionalProperties", "unevaluatedProperties" -> unknownName(holder, error, lines);
      case "type" -> mismatch(error, lines, article(rule));
      case "enum" -> mismatch(error, lines, "one of " + words(rule) + nearWord(error));
      case "const" -> mismatch(error, lines, rule.toString());
      case "minimum" -> mismatch(error, lines, "at least " + rule);
      case "maximum" -> mismatch(error, lines, "at most " + rule);
      case "exclusiveMinimum" -> mismatch(error, lines, "above " + rule);
      case "exclusiveMaximum" -> mismatch(error, lines, "below " + rule);
      case "pattern" -> mismatch(error, lines, "a text of the form " + rule.asText());
      case "minLength" -> mismatch(error, lines, "at least " + rule + " characters");
      case "maxLength" -> mismatch(error, lines, "at most " + rule + " characters");
      case "minItems" -> mismatch(error, lines, "at least " + rule + " entries");
      case "maxItems" -> mismatch(error, lines, "at most " + rule + " entries");
      case "minProperties" -> mismatch(error, lines, "at least " + rule + " members");
      case "maxProperties" -> mismatch(error, lines, "at most " + rule + " members");
      case "uniqueItems" -> mismatch(error, lines, "no entry twice");
      case "false" -> mismatch(error, lines, "nothing here, given the other members");
      default -> mismatch(error, lines, error.getMessage());
    };
  }

  private static ReadFault mismatch(Error error, Lines lines, String expected) {
    String pointer = error.getInstanceLocation().toString();
    return new ReadFault(lines.of(pointer), pointer, shown(error.getInstanceNode()), expected);
  }

  private ReadFault unknownName(String holder, Error error, Lines lines) {
    String name = error.getProperty();
    String pointer = holder + "/" + name.replace("~", "~0").replace("/", "~1");
    List<String> known = knownNames(error);
    String near = NearMiss.of(name, known).map(n -> "'" + n + "', or ").orElse("");
    return new ReadFault(
        lines.of(pointer), pointer, "'" + name + "'", near + "one of " + String.join(", ", known));
  }

  /** The names that are known stand beside the rule that refuses all others. */
  private List<String> knownNames(Error error) {
    String rule = error.getSchemaLocation().getFragment().toString();
    List<String> names = new ArrayList<>();
    root.at(rule.substring(0, rule.lastIndexOf('/')) + "/properties")
        .fieldNames()
        .forEachRemaining(names::add);
    return names;
  }

  private static String article(JsonNode type) {
    if (type.isArray()) {
      List<String> types = new ArrayList<>();
      type.forEach(t -> types.add(article(t)));
      return String.join(" or ", types);
    }
    return switch (type.asText()) {
      case "object" -> "members by name";
      case "array" -> "a list";
      case "integer" -> "a whole number";
      case "string" -> "a text";
      case "boolean" -> "true or false";
      case "null" -> "nothing";
      default -> "a " + type.asText().toLowerCase(Locale.ROOT);
    };
  }

  private static String words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asText()));
    return String.join(", ", words);
  }

  private static String nearWord(Error error) {
    List<String> words = new ArrayList<>();
    error.getSchemaNode().forEach(word -> words.add(word.asText()));
    Optional<String> near =
        error.getInstanceNode().isTextual()
            ? NearMiss.of(error.getInstanceNode().asText(), words)
            : Optional.empty();
    return near.map(word -> "; perhaps " + word).orElse("");
  }

  private static String shown(JsonNode node) {
    if (node.isNull()) {
      return "nothing";
    }
    if (node.isObject()) {
      return "members by name";
    }
    return node.isArray() ? "a list of " + node.size() : node.toString();
  }
}
