package org.standoff.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

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

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class IndexResourceTest {

  private static final String CATALOG_LINK = "</.well-known/api-catalog>; rel=\"api-catalog\"";

  @Test
  void theBareAddressLeadsToWhateverACallerMayBeginWith() throws IOException {
    List<String> addresses = addresses();
    assertThat(addresses)
        .doesNotHaveDuplicates()
        .contains(
            "/openapi",
            "/docs",
            "/q/health",
            "/q/metrics",
            "/problems",
            "/schemas",
            "/v1/microphones",
            "/v1/sources",
            "/v1/packs",
            "/v1/houses",
            "/v1/holds",
            "/v1/events",
            "/v1/floor/bleed");
    List<String> described = new ArrayList<>();
    new YAMLMapper()
        .readTree(Path.of("openapi", "standoff.yaml").toFile())
        .path("paths")
        .fieldNames()
        .forEachRemaining(described::add);
    described.removeIf(path -> path.contains("{"));
    assertThat(addresses).containsAll(described);
  }

  @Test
  void addressesWithVariablesAreTemplates() {
    assertThat(given().get("/").jsonPath().getList("templates.template", String.class))
        .doesNotHaveDuplicates()
        .contains("/v1/microphones/{pack}/{item}", "/v1/holds/{hold}/charge", "/problems/{name}")
        .allMatch(template -> template.contains("{"));
  }

  @Test
  void somethingAnswersWhereverItLeads() {
    assertThat(addresses())
        .filteredOn(address -> address.startsWith("/"))
        .hasSizeGreaterThan(20)
        .allSatisfy(
            address ->
                assertThat(given().get(address).statusCode())
                    .as(address)
                    .isNotEqualTo(404)
                    .isLessThan(500));
  }

  @Test
  void itTellsInAHeaderWhereTheDescriptionTheWordsTheHealthAndTheLicenceAre() {
    String told = given().get("/").then().statusCode(200).extract().header("Link");
    assertThat(told.split(", "))
        .containsExactly(
            "</openapi>; rel=\"service-desc\"",
            "</docs>; rel=\"service-doc\"",
            CATALOG_LINK,
            "</q/health>; rel=\"status\"",
            "<https://www.apache.org/licenses/LICENSE-2.0.txt>; rel=\"license\"");
    given().head("/").then().statusCode(200).header("Link", equalTo(told));
  }

  @Test
  void theApiCatalogStandsAtItsWellKnownPlace() {
    given()
        .get("/.well-known/api-catalog")
        .then()
        .statusCode(200)
        .contentType("application/linkset+json")
        .header("Link", equalTo(CATALOG_LINK))
        .body("linkset[0].'service-desc'[0].href", equalTo("/openapi"))
        .body("linkset[0].'service-doc'[0].href", equalTo("/docs"))
        .body("linkset[0].license[0].href", startsWith("https://"))
        .body("linkset[0].status[0].href", equalTo("/q/health"));
  }

  /** RFC 9727, 2: a HEAD is answered with a link to the catalog itself. */
  @Test
  void aHeadOfTheApiCatalogNamesIt() {
    given()
        .head("/.well-known/api-catalog")
        .then()
        .statusCode(200)
        .header("Link", equalTo(CATALOG_LINK))
        .body(emptyString());
  }

  @Test
  void problemsAndSchemasAreListed() {
    List<String> problems = given().get("/problems").jsonPath().getList("items.type");
    assertThat(problems).contains("/problems/not-found", "/problems/too-many");
    List<String> schemas = given().get("/schemas").jsonPath().getList("items.href");
    assertThat(schemas).contains("/schemas/pack.json", "/schemas/microphone.json");
    problems.forEach(address -> given().get(address).then().statusCode(200));
    schemas.forEach(address -> given().get(address).then().statusCode(200));
  }

  private static List<String> addresses() {
    return given()
        .get("/")
        .then()
        .statusCode(200)
        .body("title", equalTo("Standoff"))
        .extract()
        .jsonPath()
        .getList("links.href");
  }

  @Test
  void whereNobodyHasSaidWhomToTellOfAWeaknessNoTextSaysSo() {
    given()
        .get("/.well-known/security.txt")
        .then()
        .statusCode(404)
        .contentType("application/problem+json");
  }
}
