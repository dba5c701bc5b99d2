package org.standoff.rest.problem;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.RawHttp;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class EveryFailureIsAProblemTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"/nowhere", "/v1/nowhere", "/q/nowhere", "/probe/nowhere", "/problems/nothing"})
  void anUnknownPathIs404(String path) {
    problem(given().get(path), 404, "NOT_FOUND");
  }

  @Test
  void aMethodThatIsNotOfferedIs405AndNamesThoseThatAre() {
    problem(given().delete("/probe"), 405, "METHOD_NOT_ALLOWED")
        .header("Allow", containsString("GET"));
  }

  @Test
  void anUnknownMediaTypeWantedIs406() {
    problem(given().accept("image/png").get("/probe?count=1"), 406, "NOT_ACCEPTABLE");
  }

  @Test
  void anUnknownMediaTypeSentIs415() {
    problem(
        given().contentType("text/plain").body("count").post("/probe"),
        415,
        "UNSUPPORTED_MEDIA_TYPE");
  }

  @Test
  void aBodyDeclaredTooLargeIs413() {
    problem(
        given().contentType("application/json").body(" ".repeat(1_048_577)).post("/probe"),
        413,
        "TOO_LARGE");
  }

  @Test
  void malformedJsonIs400WithItsPlace() {
    problem(
            given().contentType("application/json").body("{\n\"count\": }").post("/probe"),
            400,
            "MALFORMED_BODY")
        .body("errors[0].line", equalTo(2))
        .body("errors[0].column", equalTo(10));
  }

  @Test
  void aParameterOfTheWrongTypeIs400() {
    problem(given().get("/probe/number?count=abc"), 400, "INVALID_REQUEST");
  }

  @Test
  void anUnknownParameterIs400WithANearMiss() {
    problem(given().get("/probe/items?pagesize=3"), 400, "INVALID_REQUEST")
        .body("errors[0].parameter", equalTo("pagesize"))
        .body("errors[0].suggestion", equalTo("page_size"));
  }

  @Test
  void faultsOfABodyComeTogether() {
    problem(
            given()
                .contentType("application/json")
                .body("{\"cuont\": 1, \"count\": 10, \"gain_db\": \"x\"}")
                .post("/probe"),
            400,
            "INVALID_REQUEST")
        .body("errors.pointer", hasItems("/cuont", "/count", "/gain_db"));
  }

  @Test
  void faultsOfAQueryComeTogether() {
    problem(given().get("/probe?count=10&gain_db=loud&loudness=3"), 400, "INVALID_REQUEST")
        .body("errors.parameter", hasItems("loudness", "count", "gain_db"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/%00", "/..%2f..", "/probe/%ff", "/probe?count=%ff"})
  void aBadlyWrittenAddressIsAFaultOfTheRequest(String path) throws IOException {
    assertThat(RawHttp.send(RestAssured.port, "GET " + path + " HTTP/1.1"))
        .startsWith("HTTP/1.1 40")
        .contains("application/problem+json");
  }

  /** The framework refuses what is no address at all before anything of ours can speak. */
  @ParameterizedTest
  @ValueSource(strings = {"/probe%zz", "/probe?count=%zz"})
  void whatIsNoAddressIs400(String path) throws IOException {
    assertThat(RawHttp.send(RestAssured.port, "GET " + path + " HTTP/1.1"))
        .startsWith("HTTP/1.1 400");
  }

  @Test
  void aBodyOfUnknownLengthOverTheLimitIs413() throws IOException {
    String chunk = "100000\r\n" + " ".repeat(1 << 20) + "\r\n1\r\n \r\n0\r\n";
    String answer =
        RawHttp.send(
            RestAssured.port,
            "POST /probe HTTP/1.1",
            "Content-Type: application/json",
            "Transfer-Encoding: chunked",
            "",
            chunk);
    assertThat(answer).startsWith("HTTP/1.1 413").contains("application/problem+json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"garbage", "/", "*/*", "application/*"})
  void aContentTypeThatIsNoMediaTypeIs415(String type) throws IOException {
    String answer =
        RawHttp.send(
            RestAssured.port,
            "POST /probe HTTP/1.1",
            "Content-Type: " + type,
            "Content-Length: 2",
            "",
            "{}");
    assertThat(answer).startsWith("HTTP/1.1 415").contains("application/problem+json");
  }

  @Test
  void whatFailsWithinIs500AndKeepsItsSecrets() {
    problem(given().get("/probe/failure"), 500, "INTERNAL").body(not(containsString("secret")));
  }

  @Test
  void whatFailsBeforeAnyResourceKeepsItsSecretsToo() {
    problem(given().get("/probe-route"), 500, "INTERNAL").body(not(containsString("secret")));
  }

  @ParameterizedTest
  @EnumSource(ProblemType.class)
  void everyTypeIsExplainedAtItsAddress(ProblemType type) {
    given()
        .get(type.uri().toString())
        .then()
        .statusCode(200)
        .contentType("application/json")
        .body("code", equalTo(type.name()))
        .body("status", equalTo(type.status()));
    given()
        .accept("text/html")
        .get(type.uri().toString())
        .then()
        .statusCode(200)
        .contentType(containsString("text/html"))
        .body(containsString(type.remedy().substring(0, 12)));
  }

  private static ValidatableResponse problem(Response response, int status, String code) {
    String id = response.header("Request-Id");
    return response
        .then()
        .statusCode(status)
        .contentType("application/problem+json")
        .header("Request-Id", matchesPattern("[0-9a-f-]{36}"))
        .header("Cache-Control", equalTo("no-store"))
        .body("status", equalTo(status))
        .body("code", equalTo(code))
        .body("type", equalTo("/problems/" + code.toLowerCase().replace('_', '-')))
        .body("title", not(containsString("null")))
        .body("instance", equalTo("urn:uuid:" + id))
        .body(not(containsString("org.standoff")))
        .body(not(containsString("Exception")));
  }
}
