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
