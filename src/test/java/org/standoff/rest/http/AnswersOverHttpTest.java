package org.standoff.rest.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.RawHttp;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class AnswersOverHttpTest {

  private static final String BODY = "{\"count\": 3, \"gain_db\": 1.23456}";

  /** Codes and words are the same for everyone, so that programs need not know the language. */
  @ParameterizedTest
  @ValueSource(strings = {"/", "/probe?count=3", "/probe?count=10", "/v1/nowhere"})
  void textsAreInEnglishWhateverIsAskedForAndSaySo(String path) {
    Response german = given().header("Accept-Language", "de, en;q=0.1").get(path);
    assertThat(german.header("Content-Language")).isEqualTo("en");
    assertThat(german.asString().replaceAll("urn:uuid:[0-9a-f-]+", ""))
        .isEqualTo(given().get(path).asString().replaceAll("urn:uuid:[0-9a-f-]+", ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/probe?count=3", "/probe?count=10", "/q/health/live", "/%00"})
  void everyAnswerTellsHowLongTheServiceHadIt(String path) {
    assertThat(given().urlEncodingEnabled(false).get(path).headers().getValues("Server-Timing"))
        .singleElement()
        .asString()
        .matches("total;dur=\\d+\\.\\d");
  }

  @Test
  void anAnswerThatAskedTheDatabaseTellsHowLongThatTook() {
    String told =
        given()
            .get("/v1/houses")
            .then()
            .statusCode(200)
            .header("Server-Timing", matchesPattern("total;dur=[\\d.]+, database;dur=[\\d.]+"))
            .extract()
            .header("Server-Timing");
    double[] ms =
        Pattern.compile("[^\\d.]+")
            .splitAsStream(told)
            .skip(1)
            .mapToDouble(Double::parseDouble)
            .toArray();
    assertThat(ms[1]).isLessThanOrEqualTo(ms[0]);
  }

  @Test
  void anAnswerHeldAlreadyIsNotSentAgain() {
    String tag = given().get("/probe?count=3").then().statusCode(200).extract().header("ETag");
    given()
        .header("If-None-Match", tag)
        .get("/probe?count=3")
        .then()
        .statusCode(304)
        .header("ETag", equalTo(tag))
        .body(emptyString());
    given().header("If-None-Match", tag).get("/probe?count=4").then().statusCode(200);
    given().header("If-None-Match", tag).head("/probe?count=3").then().statusCode(304);
  }

  @Test
  void theSamePostHasTheSameTagAndNo304() {
    Response first = given().contentType("application/json").body(BODY).post("/probe");
    String tag = first.header("ETag");
    given()
        .contentType("application/json")
        .header("If-None-Match", tag)
        .body(BODY)
        .post("/probe")
        .then()
        .statusCode(200)
        .header("ETag", equalTo(tag))
        .header("Cache-Control", equalTo("no-store"));
    assertThat(first.asString()).isEqualTo("{\"count\":3,\"gain_db\":1.23}");
  }

  @Test
  void aGetAnswersAsItsPostTwin() {
    given()
        .get("/probe?count=3&gain_db=1.23456")
        .then()
        .statusCode(200)
        .header("Vary", equalTo("Accept, Accept-Encoding"))
        .header("Cache-Control", equalTo("no-cache"))
        .body(equalTo("{\"count\":3,\"gain_db\":1.23}"));
  }

  @Test
  void aBatchIsAnsweredLineByLineInOrder() {
    String answer =
        ndjson()
            .body("{\"count\": 1}\n{\"count\": 99}\n\n{oops\n{\"count\": 2}\n")
            .post("/probe")
            .then()
            .statusCode(200)
            .contentType(containsString("application/x-ndjson"))
            .extract()
            .asString();
    List<String> lines = answer.lines().toList();
    assertThat(lines).hasSize(4);
    assertThat(lines.get(0)).isEqualTo("{\"line\":1,\"answer\":{\"count\":1,\"gain_db\":0}}");
    assertThat(lines.get(1)).startsWith("{\"line\":2,\"problem\":").contains("OUT_OF_RANGE");
    assertThat(lines.get(2)).startsWith("{\"line\":4,\"problem\":").contains("MALFORMED_BODY");
    assertThat(lines.get(3)).startsWith("{\"line\":5,\"answer\":{\"count\":2");
  }

  @Test
  void aBatchOfTooManyLinesIsRefusedWhole() {
    ndjson()
        .body("{\"count\": 1}\n".repeat(1001))
        .post("/probe")
        .then()
        .statusCode(400)
        .body("errors[0].found", equalTo("1001"));
  }

  @Test
  void pagesFollowEachOtherToTheEnd() {
    List<String> seen = new ArrayList<>();
    String next = "/probe/items";
    while (next != null) {
      Response page = given().urlEncodingEnabled(false).get(next);
      page.then()
          .statusCode(200)
          .header("Cache-Control", equalTo("public, max-age=60, stale-while-revalidate=60"));
      seen.addAll(page.jsonPath().getList("items"));
      next =
          page.headers().getValues("Link").stream()
              .filter(link -> link.endsWith("rel=\"next\""))
              .map(link -> link.substring(1, link.indexOf('>')))
              .findFirst()
              .orElse(null);
      String token = page.jsonPath().getString("next_page_token");
      assertThat(token == null).isEqualTo(next == null);
    }
    assertThat(seen)
        .hasSize(250)
        .doesNotHaveDuplicates()
        .startsWith("item-100")
        .endsWith("item-349");
  }

  @Test
  void aPageTooLargeIsCutAndOneTooSmallRefused() {
    given().get("/probe/items?page_size=999").then().body("items", hasSize(200));
    given().get("/probe/items?page_size=999999999").then().body("items", hasSize(200));
    given().get("/probe/items").then().body("items", hasSize(50));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "abc", "1.5", "", "1000000000"})
  void aPageSizeThatIsNoneIsRefused(String size) {
    given()
        .get("/probe/items?page_size=" + size)
        .then()
        .statusCode(400)
        .body("errors[0].parameter", equalTo("page_size"))
        .body("errors[0].allowed", equalTo("1 to 200"));
  }

  @Test
  void aTokenOfAnotherFilterIsRefused() {
    String token = given().get("/probe/items?prefix=item").jsonPath().getString("next_page_token");
    given()
        .get("/probe/items?prefix=other&page_token=" + token)
        .then()
        .statusCode(400)
        .body("errors[0].parameter", equalTo("page_token"));
    given().get("/probe/items?page_token=%20%20").then().statusCode(400);
  }

  @Test
  void theCallersRequestIdIsKeptWhereItIsAUuid() {
    String id = "01234567-89ab-cdef-0123-456789abcdef";
    given().header("Request-Id", id).get("/probe?count=1").then().header("Request-Id", equalTo(id));
    given()
        .header("Request-Id", "<script>")
        .get("/probe?count=1")
        .then()
        .header("Request-Id", not(containsString("script")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/probe?count=1", "/nowhere", "/q/health"})
  void everyAnswerCarriesTheSecurityHeaders(String path) {
    given()
        .get(path)
        .then()
        .header("X-Content-Type-Options", equalTo("nosniff"))
        .header("Referrer-Policy", equalTo("no-referrer"))
        .header("Content-Security-Policy", containsString("default-src 'none'"));
  }

  @Test
  void aBodyThatDoesNotSayWhatItIsIsReadAsJson() throws IOException {
    String answer =
        RawHttp.send(
            RestAssured.port,
            "POST /probe HTTP/1.1",
            "Accept: application/json",
            "Content-Length: " + BODY.length(),
            "",
            BODY);
    assertThat(answer).startsWith("HTTP/1.1 200").contains("{\"count\":3,\"gain_db\":1.23}");
  }

  @Test
  void aCompressedAnswerHasATagOfItsOwn() throws IOException {
    String plain = RawHttp.send(RestAssured.port, "GET /probe?count=1 HTTP/1.1");
    String packed =
        RawHttp.send(RestAssured.port, "GET /probe?count=1 HTTP/1.1", "Accept-Encoding: gzip");
    assertThat(packed.toLowerCase(Locale.ROOT)).contains("content-encoding: gzip");
    assertThat(tag(packed)).isNotEqualTo(tag(plain));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/schemas/microphone.json", "/.well-known/api-catalog"})
  void formsOfJsonAreCompressedForWhoTakesThem(String address) throws IOException {
    String packed =
        RawHttp.send(RestAssured.port, "GET " + address + " HTTP/1.1", "Accept-Encoding: gzip");
    assertThat(packed.toLowerCase(Locale.ROOT)).contains("content-encoding: gzip");
  }

  @Test
  void aProblemHasNoTag() {
    given().get("/nowhere").then().header("ETag", nullValue());
  }

  private static RequestSpecification ndjson() {
    return given()
        .config(
            RestAssured.config()
                .encoderConfig(
                    EncoderConfig.encoderConfig()
                        .encodeContentTypeAs("application/x-ndjson", ContentType.TEXT)))
        .contentType("application/x-ndjson");
  }

  private static String tag(String answer) {
    return answer
        .lines()
        .filter(line -> line.startsWith("ETag: "))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no ETag in " + answer));
  }
}
