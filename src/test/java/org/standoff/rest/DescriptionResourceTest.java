package org.standoff.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.RawHttp;

/** How the description of the interface is served. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class DescriptionResourceTest {

  private static final int PLAIN_BYTES = 400_000;

  @ParameterizedTest
  @CsvSource({
    "/openapi, */*, application/yaml",
    "/openapi, text/html;q=0.5 */*;q=0.1, application/yaml",
    "/openapi, application/yaml, application/yaml",
    "/openapi, application/json, application/json",
    "/openapi.json, */*, application/json",
    "/openapi.yaml, */*, application/yaml"
  })
  void itComesInTheFormAskedFor(String address, String accept, String form) {
    Response answer = given().accept(accept.replace(' ', ',')).get(address);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.contentType()).startsWith(form);
    assertThat(answer.asString().strip())
        .startsWith(form.endsWith("json") ? "{" : "---")
        .contains("/v1/settings");
  }

  @Test
  void whoAsksForNoFormGetsYaml() throws IOException {
    assertThat(RawHttp.send(RestAssured.port, "GET /openapi HTTP/1.1"))
        .containsIgnoringCase("content-type: application/yaml");
  }

  @Test
  void aFormThatItHasNotIsRefused() {
    given()
        .accept("image/png")
        .get("/openapi")
        .then()
        .statusCode(406)
        .contentType("application/problem+json")
        .body("code", equalTo("NOT_ACCEPTABLE"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "application/yaml"})
  void itIsCompressedForWhoTakesItSo(String form) throws IOException {
    String plain = RawHttp.send(RestAssured.port, "GET /openapi HTTP/1.1", "Accept: " + form);
    String packed =
        RawHttp.send(
            RestAssured.port, "GET /openapi HTTP/1.1", "Accept: " + form, "Accept-Encoding: gzip");
    assertThat(packed.toLowerCase(Locale.ROOT)).contains("content-encoding: gzip");
    assertThat(plain).hasSizeGreaterThan(PLAIN_BYTES);
    assertThat(packed).hasSizeLessThan(PLAIN_BYTES / 4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "application/yaml"})
  void whoHasItIsNotSentItAgain(String form) {
    Response first = given().accept(form).get("/openapi");
    String tag = first.header("ETag");
    assertThat(tag).startsWith("\"");
    assertThat(first.header("Cache-Control"))
        .isEqualTo("public, max-age=3600, stale-while-revalidate=3600");
    assertThat(first.header("Vary")).contains("Accept");
    given()
        .accept(form)
        .header("If-None-Match", tag)
        .get("/openapi")
        .then()
        .statusCode(304)
        .header("ETag", equalTo(tag))
        .body(emptyString());
    given()
        .accept(form)
        .head("/openapi")
        .then()
        .statusCode(200)
        .contentType(startsWith(form))
        .header("ETag", equalTo(tag))
        .body(emptyString());
  }

  @Test
  void eachFormHasATagOfItsOwn() {
    assertThat(given().accept("application/json").get("/openapi").header("ETag"))
        .isNotEqualTo(given().accept("application/yaml").get("/openapi").header("ETag"));
  }

  @Test
  void thePageForPeopleHasTheWordsOfEveryOperation() {
    String page =
        given().get("/docs").then().statusCode(200).contentType("text/html").extract().asString();
    assertThat(page)
        .contains(
            "<h1>Standoff ",
            "<code>GET /v1/microphones/{pack}/{item}</code>",
            "<code>POST /v1/holds</code> Hold units",
            "<code>distance_m</code>",
            "(RFC 9457)")
        .doesNotContain("<script", "`");
  }

  @Test
  void thePageForPeopleShowsACallOfEveryOperationInThreeLanguages() {
    String page = given().get("/docs").asString();
    long operations = page.lines().filter(line -> line.startsWith("<dt>")).count();
    for (String language : List.of("Shell", "Python", "Lua")) {
      assertThat(page.split("<p>" + language + "</p><pre><code>", -1))
          .as(language)
          .hasSize((int) operations + 1);
    }
    assertThat(page).contains("Authorization: Bearer $STANDOFF_TOKEN").doesNotContain("eyJ");
  }
}
