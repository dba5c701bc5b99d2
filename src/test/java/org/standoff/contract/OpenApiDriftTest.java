package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Golden;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class OpenApiDriftTest {

  @Test
  void theCommittedDescriptionIsTheServedOne() throws IOException {
    Golden.check(Path.of("openapi", "standoff.yaml"), served());
  }

  @Test
  void everyOperationHasAnIdASummaryATagAndProblems() throws IOException {
    List<JsonNode> operations = operations();
    assertThat(operations).isNotEmpty();
    assertThat(operations)
        .allSatisfy(
            operation -> {
              assertThat(operation.path("operationId").asText()).isNotEmpty();
              assertThat(operation.path("summary").asText()).isNotEmpty();
              assertThat(operation.path("tags")).isNotEmpty();
              assertThat(
                      operation
                          .at("/responses/400/content/application~1problem+json/schema/$ref")
                          .asText())
                  .isEqualTo("#/components/schemas/Problem");
            });
    assertThat(operations.stream().map(operation -> operation.path("operationId").asText()))
        .doesNotHaveDuplicates();
  }

  @Test
  void membersAreSnakeCase() throws IOException {
    JsonNode schemas = new YAMLMapper().readTree(served()).at("/components/schemas");
    List<String> members = new ArrayList<>();
    schemas.forEach(
        schema -> schema.path("properties").fieldNames().forEachRemaining(members::add));
    assertThat(members).isNotEmpty().allMatch(member -> member.matches("[a-z][a-z0-9_-]*"));
  }

  @Test
  void everyNumberTellsItsUnitAsACode() throws IOException {
    JsonNode description = new YAMLMapper().readTree(served());
    Map<String, String> units = new TreeMap<>();
    units("", description.path("paths"), units);
    description
        .at("/components/schemas")
        .properties()
        .forEach(schema -> units(schema.getKey(), schema.getValue(), units));
    assertThat(units)
        .hasSizeGreaterThan(400)
        .containsEntry("Chosen/properties/gain_db", "dB")
        .containsEntry("Chosen/properties/high_pass_hz", "Hz")
        .containsEntry("Terms/properties/preamp_input_dbu", "dB{re_0.775_V}")
        .containsEntry("CellOctaves/properties/total_db_spl/additionalProperties", "dB[SPL]")
        .containsEntry("HeadroomQuestion/properties/peak_db_spl", "dB[SPL]{peak}")
        .containsEntry("SourceOnFloor/properties/sound_power_db", "dB{re_1_pW}")
        .containsEntry("Coordinates/properties/x", "m")
        .containsEntry("Basis/properties/speed_of_sound_m_per_s", "m/s")
        .containsEntry("House/properties/turn_round_min", "min");
    // these have the unit of what they are about, which is told beside them or by what has them
    assertThat(units.entrySet())
        .filteredOn(number -> number.getValue().isEmpty())
        .extracting(Map.Entry::getKey)
        .allMatch(
            number ->
                number.matches(
                    "(Fault/properties/(exclusive_)?(minimum|maximum)|GivesUp/properties/figure"
                        + "|Refusal/properties/(found|limit)"
                        + "|(AskedPair|FittedPair|UnfitPair)/properties/\\w+/additionalProperties"
                        + "|Range/properties/\\w+)"));
    JsonNode schemas = description.at("/components/schemas");
    assertThat(schemas.at("/AtCapsule/properties/peak_db_spl/x-unit").asText())
        .as("a range has the unit of what it is")
        .isEqualTo("dB[SPL]{peak}");
    assertThat(schemas.at("/House/properties/hours").toString())
        .as("times of day are no number")
        .doesNotContain("x-unit");
  }

  private static void units(String place, JsonNode schema, Map<String, String> units) {
    String type = schema.path("type").toString();
    if (type.contains("\"number\"") || type.contains("\"integer\"")) {
      units.put(place, schema.path("x-unit").asText());
    }
    schema
        .properties()
        .forEach(
            inner -> {
              if (inner.getValue().isContainerNode() && !inner.getKey().startsWith("example")) {
                units(place + "/" + inner.getKey(), inner.getValue(), units);
              }
            });
    for (int i = 0; schema.isArray() && i < schema.size(); i++) {
      units(place + "/" + i, schema.get(i), units);
    }
  }

  private static List<JsonNode> operations() throws IOException {
    List<JsonNode> operations = new ArrayList<>();
    new YAMLMapper()
        .readTree(served())
        .path("paths")
        .forEach(path -> path.forEach(entry -> operations.add(entry)));
    return operations.stream().filter(entry -> entry.has("responses")).toList();
  }

  private static String served() {
    return given().accept("application/yaml").get("/openapi").then().extract().asString();
  }
}
