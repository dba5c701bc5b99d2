package org.standoff.rest.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.HalfSent;
import org.standoff.fixture.StuckReaders;

/** Limits small enough to be reached: two requests at once, few an hour. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(LimitsOverHttpTest.Small.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class LimitsOverHttpTest {
  private static final String COMPUTED = "/v1/packs";
  private static final String CONNECTIONS = "http_server_active_connections";
  private static final int AT_ONCE = 2;
  private static final int REQUESTS_IN_AN_HOUR = 40;

  /** Stays on one connection, so that those of others can be counted. */
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  /** The settings. */
  public static class Small implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of(
          "standoff.limits.requests-at-once",
          String.valueOf(AT_ONCE),
          "standoff.limits.rate.requests",
          String.valueOf(REQUESTS_IN_AN_HOUR),
          "standoff.limits.rate.window",
          "1h",
          "standoff.cross-origin.allowed",
          "https://desk.example.org");
    }
  }

  @Test
  @Order(1)
  void oneRequestTooManyIsToldToComeAgainWhileHealthAnswers() throws Exception {
    given().get(COMPUTED).then().statusCode(200).body("code", nullValue());
    try (StuckReaders inside = StuckReaders.of(AT_ONCE)) {
      await().untilAsserted(LimitsOverHttpTest::assertThatOneMoreIsTooMuch);
      given().get("/q/health/live").then().statusCode(200);
      given().get("/q/metrics").then().body(containsString("standoff_requests_inside_most 2.0"));
    }
    await().untilAsserted(() -> given().get(COMPUTED).then().statusCode(200));
    given()
        .get("/q/metrics")
        .then()
        .body(matchesPattern("(?s).*standoff_requests_shed_total [1-9].*"));
  }

  /** Or whoever asks what is dear and hangs up, again and again, gets more than all others. */
  @Test
  @Order(2)
  void whoHangsUpLeavesNoRoomBeforeTheirWorkIsDone() throws Exception {
    try (StuckReaders inside = StuckReaders.of(AT_ONCE)) {
      await().untilAsserted(LimitsOverHttpTest::assertThatOneMoreIsTooMuch);
      double connections = gauge(CONNECTIONS);
      inside.hangUp();
      await()
          .untilAsserted(
              () -> assertThat(gauge(CONNECTIONS)).isLessThanOrEqualTo(connections - AT_ONCE));
      assertThatOneMoreIsTooMuch();
    }
    await().untilAsserted(() -> given().get(COMPUTED).then().statusCode(200));
    await().untilAsserted(() -> assertThat(gauge("standoff_requests_inside")).isZero());
  }

  @Test
  @Order(2)
  void bodiesThatDoNotComeTakeNoRoomFromOthers() throws Exception {
    List<Socket> stalled = new ArrayList<>();
    try {
      for (int i = 0; i < 5 * AT_ONCE; i++) {
        stalled.add(HalfSent.post());
      }
      await()
          .untilAsserted(
              () -> assertThat(gauge("standoff_bodies_coming_in")).isEqualTo(stalled.size()));
      given().get(COMPUTED).then().statusCode(200);
      assertThat(gauge("standoff_bodies_kept_bytes")).isEqualTo(stalled.size());
    } finally {
      for (Socket socket : stalled) {
        socket.close();
      }
    }
    await().untilAsserted(() -> assertThat(gauge("standoff_bodies_coming_in")).isZero());
    assertThat(gauge("standoff_bodies_kept_bytes")).isZero();
  }

  private static void assertThatOneMoreIsTooMuch() {
    given()
        .get(COMPUTED)
        .then()
        .statusCode(503)
        .contentType("application/problem+json")
        .header("Retry-After", equalTo("1"))
        .body("code", equalTo("OVERLOADED"));
  }

  private double gauge(String name) throws IOException, InterruptedException {
    URI metrics = URI.create(RestAssured.baseURI + ":" + RestAssured.port + "/q/metrics");
    return client
        .send(HttpRequest.newBuilder(metrics).build(), HttpResponse.BodyHandlers.ofLines())
        .body()
        .filter(line -> line.matches(name + "(\\{.*})? .*"))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' '))))
        .sum();
  }

  @Test
  @Order(3)
  void aPageOfAnAllowedOriginMayReadTheAnswer() {
    given()
        .header("Origin", "https://desk.example.org")
        .get("/")
        .then()
        .statusCode(200)
        .header("Access-Control-Allow-Origin", equalTo("https://desk.example.org"))
        .header("Access-Control-Expose-Headers", containsString("ETag"));
  }

  @Test
  @Order(4)
  void aBrowserIsToldBeforehandWhatItMaySend() {
    given()
        .header("Origin", "https://desk.example.org")
        .header("Access-Control-Request-Method", "POST")
        .header("Access-Control-Request-Headers", "content-type")
        .options("/v1/settings")
        .then()
        .statusCode(204)
        .header("Access-Control-Allow-Origin", equalTo("https://desk.example.org"))
        .header("Access-Control-Allow-Methods", containsString("POST"))
        .header("Access-Control-Allow-Headers", containsString("If-Match"));
  }

  @Test
  @Order(5)
  void aPageOfAnyOtherOriginMayNot() {
    given()
        .header("Origin", "https://elsewhere.example.org")
        .get("/")
        .then()
        .statusCode(200)
        .header("Access-Control-Allow-Origin", nullValue());
  }

  /** Or a shared cache would hand one origin's answer to another. */
  @Test
  @Order(6)
  void anAnswerVariesByOrigin() {
    assertThat(
            given()
                .header("Origin", "https://desk.example.org")
                .get("/")
                .headers()
                .getValues("Vary"))
        .anySatisfy(value -> assertThat(value).contains("Origin"));
  }

  @Test
  @Order(6)
  void anAnswerToNoOriginVariesByOriginToo() {
    assertThat(given().get("/").headers().getValues("Vary"))
        .anySatisfy(value -> assertThat(value).contains("Origin"));
  }

  /** The framework would drop what follows the semicolon, after nobody counted the request. */
  @ParameterizedTest
  @ValueSource(strings = {"/v1;x/packs", "/v1/packs;x=1", "/;/v1/packs"})
  @Order(6)
  void anAddressWithMatrixParametersIsNoAddressHere(String address) {
    given().urlEncodingEnabled(false).get(address).then().statusCode(404);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/%761/packs", "//v1/packs", "/./v1/packs", "/q/../v1/packs"})
  @Order(6)
  void anAddressInDisguiseIsCountedAsWell(String address) {
    given()
        .urlEncodingEnabled(false)
        .get(address)
        .then()
        .header("RateLimit", matchesPattern("\"requests\";r=\\d+;t=\\d+"));
  }

  /** Nobody gets a share of its own by saying so. */
  @Test
  @Order(6)
  void aForwardedAddressChangesNothingWhereNoSettingSaysSo() {
    int first = left("192.0.2.7");
    assertThat(left("192.0.2.8")).isEqualTo(first - 1);
    assertThat(left("2001:db8:7:2::5")).isEqualTo(first - 2);
  }

  /** How many requests are left to whoever this is said to be. */
  private static int left(String forwardedFor) {
    String told = given().header("X-Forwarded-For", forwardedFor).get(COMPUTED).header("RateLimit");
    return Integer.parseInt(told.replaceAll(".*;r=(\\d+);.*", "$1"));
  }

  @Test
  @Order(7)
  void whoAsksTooMuchIsToldWhenToComeAgain() {
    given()
        .get(COMPUTED)
        .then()
        .header("RateLimit-Policy", equalTo("\"requests\";q=40;w=3600"))
        .header("RateLimit", matchesPattern("\"requests\";r=\\d+;t=\\d+"));
    for (int i = 0; i < REQUESTS_IN_AN_HOUR; i++) {
      given().get(COMPUTED);
    }
    given()
        .get(COMPUTED)
        .then()
        .statusCode(429)
        .contentType("application/problem+json")
        .header("RateLimit", matchesPattern("\"requests\";r=0;t=\\d+"))
        .header("Retry-After", matchesPattern("\\d+"))
        .body("code", equalTo("TOO_MANY"));
    given().get("/q/health/live").then().statusCode(200);
  }
}
