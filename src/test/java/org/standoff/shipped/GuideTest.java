package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The guide for newcomers shows files that work and tables that are the schemas'. */
class GuideTest {
  private static final Path GUIDE = ShippedCatalogue.ROOT.resolve("README.md");
  private static final Pattern EXAMPLE =
      Pattern.compile("```yaml\n# (\\S+)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern TABLE =
      Pattern.compile("(<!-- table: (\\S+) -->\n).*?(<!-- end -->)", Pattern.DOTALL);
  private static final Pattern COPIED = Pattern.compile("(?m)^cp (\\S+)");

  @TestFactory
  Stream<DynamicTest> everyExampleIsAFileThatIsTaken() {
    List<DynamicTest> tests =
        EXAMPLE
            .matcher(guide())
            .results()
            .map(
                found ->
                    dynamicTest(
                        found.group(1),
                        () ->
                            assertThat(
                                    ShippedCatalogue.schema(kindOf(found.group(1)))
                                        .validate(ShippedCatalogue.yaml(found.group(2))))
                                .extracting(Error::toString)
                                .isEmpty()))
            .toList();
    assertThat(tests).hasSize(2);
    return tests.stream();
  }

  @Test
  void theFileToCopyIsThere() {
    Matcher copied = COPIED.matcher(guide());
    assertThat(copied.find()).isTrue();
    assertThat(Path.of(copied.group(1))).isRegularFile();
  }

  @Test
  void theTablesAreTheSchemas() throws IOException {
    String now = TABLE.matcher(guide()).replaceAll(GuideTest::withTable);
    if (Boolean.getBoolean("standoff.rewrite")) {
      Files.writeString(GUIDE, now);
    }
    assertThat(guide()).as("run this test with -Dstandoff.rewrite=true").isEqualTo(now);
  }

  @Test
  void everyKindHasATable() {
    assertThat(TABLE.matcher(guide()).results().map(found -> found.group(2)))
        .containsExactlyInAnyOrderElementsOf(SchemasTest.kinds());
  }

  private static String withTable(MatchResult found) {
    List<String> rows = new ArrayList<>();
    rows.add("| property | meaning | values | default |");
    rows.add("| --- | --- | --- | --- |");
    addRows(ShippedCatalogue.schemaNode(found.group(2)), "", rows);
    return Matcher.quoteReplacement(
        found.group(1) + String.join("\n", rows) + "\n" + found.group(3));
  }

  private static void addRows(JsonNode schema, String place, List<String> rows) {
    Set<String> required =
        schema.path("required").valueStream().map(JsonNode::asText).collect(Collectors.toSet());
    schema
        .path("properties")
        .propertyStream()
        .forEach(entry -> addRow(entry.getValue(), place, entry.getKey(), required, rows));
  }

  private static void addRow(
      JsonNode property, String place, String name, Set<String> required, List<String> rows) {
    String path = place + name;
    rows.add(
        "| %s | %s | %s | %s |"
            .formatted(
                required.contains(name) ? "**`" + path + "`**" : "`" + path + "`",
                property.path("description").asText(),
                values(property),
                property.has("default") ? "`" + property.get("default").asText() + "`" : ""));
    if (!isOctaves(property)) {
      addRows(property, path + ".", rows);
    }
    addRows(property.path("items"), path + "[].", rows);
    addRows(property.path("additionalProperties"), path + ".*.", rows);
  }

  private static boolean isOctaves(JsonNode property) {
    return property.path("properties").has("31.5");
  }

  private static String values(JsonNode property) {
    if (property.has("enum")) {
      return property
          .get("enum")
          .valueStream()
          .map(word -> "`" + word.asText() + "`")
          .collect(Collectors.joining(", "));
    }
    if (property.has("const")) {
      return "`" + property.get("const").asText() + "`";
    }
    return switch (property.path("type").asText()) {
      case "number", "integer" -> range(property);
      case "array" -> "list of " + counted(property, "minItems", "maxItems");
      case "object" -> isOctaves(property) ? octaves(property) : "";
      case "string" -> "text, at most " + property.get("maxLength").asText() + " characters";
      default -> "`true`, `false`";
    };
  }

  private static String octaves(JsonNode property) {
    return "octave map, each " + range(property.at("/properties/1k"));
  }

  private static String counted(JsonNode property, String least, String most) {
    return property.get(least).asText() + " to " + property.get(most).asText();
  }

  private static String range(JsonNode property) {
    String least =
        property.has("minimum")
            ? property.get("minimum").asText()
            : "above " + property.get("exclusiveMinimum").asText();
    return least + " to " + property.get("maximum").asText();
  }

  private static String kindOf(String path) {
    String[] parts = path.split("/");
    return parts.length == 2 ? "pack" : ShippedCatalogue.KINDS.get(parts[1]);
  }

  private static String guide() {
    return ShippedCatalogue.text(GUIDE);
  }
}
