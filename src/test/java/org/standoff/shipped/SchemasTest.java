package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas themselves: closed, described, bounded. */
class SchemasTest {

  static Set<String> kinds() {
    Set<String> kinds = new TreeSet<>(ShippedCatalogue.KINDS.values());
    kinds.add("pack");
    return kinds;
  }

  @Test
  void everyKindThatASchemaDescribesIsShipped() {
    assertThat(ShippedCatalogue.KINDS.values())
        .as("ship an example of the kind, or drop its schema")
        .allMatch(kind -> !ShippedCatalogue.ofKind(kind).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void aSchemaIsAValidSchemaWithAnAddress(String kind) {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    JsonNode schema = ShippedCatalogue.schemaNode(kind);
    assertThat(meta.validate(schema)).extracting(Error::toString).isEmpty();
    assertThat(schema.at("/$id").textValue())
        .isEqualTo("https://standoff.example/schemas/" + kind + ".json");
    assertThat(schema.at("/properties/format/const").intValue()).isEqualTo(1);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyPropertyIsDescribedAndBounded(String kind) {
    List<String> faults = new ArrayList<>();
    inspect(ShippedCatalogue.schemaNode(kind), "", faults);
    assertThat(faults).as("%s.json", kind).isEmpty();
  }

  @ParameterizedTest(name = "{0}: {1}/{2} = {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "microphone | core/dyn-card-1 | /outputs/0/patterns/0 | self_noise_dba | 12",
        "microphone | core/sdc-card-1 | '' | self_noise | 12",
        "microphone | core/sdc-card-1 | '' | powering | { need: p48 }",
        "microphone | core/sdc-card-1 | /powering | current_ma | 10.5",
        "microphone | core/sdc-card-1 | /powering | need | none",
        "microphone | core/rib-8-1 | '' | powering | { need: p48, current_ma: 2 }",
        "microphone | core/sdc-card-1 | /maximum_spl | level_db_spl | 40",
        "microphone | core/sdc-card-1 | /pads/0 | pad_db | 0",
        "microphone | core/sdc-card-1 | /pads/0 | pad_db | 10 dB",
        "source | core/kick | '' | members | [core/snare]",
        "source | core/kick | /dynamics_db | loud | 3",
        "preamp | core/preamp-16 | '' | phantom | { available: true }",
        "room | core/booth | /surfaces/0/absorption | 1000 | 0.5",
        "pack | core | '' | version | 1.0",
      })
  void aFileWithOneImpossibleFigureIsRefused(
      String kind, String id, String pointer, String property, String value) {
    JsonNode sound = contentOf(kind, id);
    ObjectNode changed = sound.deepCopy();
    ((ObjectNode) changed.at(pointer)).set(property, ShippedCatalogue.yaml(value));
    Schema schema = ShippedCatalogue.schema(kind);
    assertThat(schema.validate(sound)).extracting(Error::toString).isEmpty();
    assertThat(schema.validate(changed)).isNotEmpty();
  }

  private static JsonNode contentOf(String kind, String id) {
    return kind.equals("pack")
        ? ShippedCatalogue.packs().stream()
            .filter(pack -> pack.pack().equals(id))
            .findFirst()
            .orElseThrow()
            .content()
        : ShippedCatalogue.find(kind, id).content();
  }

  private static void inspect(JsonNode schema, String place, List<String> faults) {
    if (!schema.has("description") && !place.endsWith("[]")) {
      faults.add(place + " says nothing: add a description with its unit");
    }
    switch (schema.at("/type").asText()) {
      case "object" -> inspectObject(schema, place, faults);
      case "array" -> {
        require(schema, "maxItems", place, faults);
        inspect(schema.get("items"), place + "[]", faults);
      }
      case "string" -> require(schema, "maxLength", place, faults);
      case "number", "integer" -> {
        require(schema, "maximum", place, faults);
        if (!schema.has("minimum")) {
          require(schema, "exclusiveMinimum", place, faults);
        }
      }
      default -> {
        // constants, words of a list and booleans bound themselves
      }
    }
  }

  private static void inspectObject(JsonNode schema, String place, List<String> faults) {
    JsonNode others = schema.path("additionalProperties");
    if (others.isObject()) {
      require(schema, "propertyNames", place, faults);
      require(schema, "maxProperties", place, faults);
      inspect(others, place + ".*", faults);
    } else if (!others.isBoolean() || others.booleanValue()) {
      faults.add(place + " is open: set additionalProperties to false");
    }
    Stream.of(schema.path("properties"))
        .flatMap(JsonNode::propertyStream)
        .forEach(entry -> inspect(entry.getValue(), place + "." + entry.getKey(), faults));
  }

  private static void require(JsonNode schema, String bound, String place, List<String> faults) {
    if (!schema.has(bound)) {
      faults.add(place + " is unbounded: add " + bound);
    }
  }
}
