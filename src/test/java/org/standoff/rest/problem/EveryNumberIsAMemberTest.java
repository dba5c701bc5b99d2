package org.standoff.rest.problem;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.sql.SQLException;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.NumbersInProblems;
import org.standoff.fixture.StuckReaders;
import org.standoff.fixture.Tokens;

/**
 * No problem tells a number in words alone. The generated requests are held to the same; here are
 * the problems that they don't raise, with limits small enough to be reached.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(EveryNumberIsAMemberTest.Small.class)
class EveryNumberIsAMemberTest {

  private static final String MICROPHONE = "boathouse/dyn-card-1";
  private static final int AT_ONCE = 2;
  private static final int IN_AN_HOUR = 60;

  /** The settings. */
  public static class Small implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of(
          "standoff.limits.requests-at-once", String.valueOf(AT_ONCE),
          "standoff.limits.rate.requests", String.valueOf(IN_AN_HOUR),
          "standoff.limits.rate.window", "1h");
    }
  }

  /** A problem, and a member that it has to have; the one that uses up the share comes last. */
  enum Raised {
    BODY_TOO_LARGE(413, "/max_body_bytes", "1048576"),
    SHEET_TOO_LARGE(413, "/max_body_bytes", "33554432"),
    BODY_TOO_DEEP(400, "/errors/0/max_levels", "32"),
    TEXT_TOO_LONG(400, "/errors/0/max_text_characters", "262144"),
    NUMBER_TOO_LONG(400, "/errors/0/max_number_characters", "64"),
    VALUE_TOO_LARGE(400, "/errors/0/maximum", "9"),
    SEVERAL_FAULTS(400, "/fault_count", "3"),
    SUBJECT_TOO_LONG(401, "/max_subject_characters", "100"),
    UNIT_UNDER_HOLD(409, "/errors/0/until", null),
    LINES_SHORT(409, "/shortfall_count", "2"),
    STATE_CHANGED(412, "/current_etag", null),
    TOO_MUCH_AT_ONCE(503, "/max_concurrent_requests", "2"),
    TOO_OFTEN(429, "/limit_requests", "60");

    private final int status;
    private final String pointer;
    private final String value;

    Raised(int status, String pointer, String value) {
      this.status = status;
      this.pointer = pointer;
      this.value = value;
    }
  }

  @ParameterizedTest
  @EnumSource(Raised.class)
  void everyNumberOfAProblemIsAMemberThatItsPageExplains(Raised raised) {
    Response response = raise(raised);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(raised.status);
    JsonNode problem = Ask.tree(response.asString());
    assertThat(NumbersInProblems.untold(problem)).as(response.asString()).isEmpty();
    JsonNode member = problem.at(raised.pointer);
    assertThat(member.isValueNode()).as(response.asString()).isTrue();
    if (raised.value != null) {
      assertThat(member.asText()).isEqualTo(raised.value);
    }
    assertThat(
            given()
                .get(problem.path("type").asText())
                .jsonPath()
                .getList("members.pointer", String.class))
        .contains(raised.pointer.replace("/0/", "/-/"));
    assertThat(problem.path("retry_after_s").asText(null))
        .as("the header and the member say the same")
        .isEqualTo(response.header("Retry-After"));
  }

  private static Response raise(Raised raised) {
    return switch (raised) {
      case BODY_TOO_LARGE -> probe(" ".repeat((1 << 20) + 1));
      case SHEET_TOO_LARGE ->
          given()
              .contentType("text/csv")
              .body(" ".repeat((32 << 20) + 1))
              .put("/v1/houses/any/units");
      case BODY_TOO_DEEP -> probe("[".repeat(40) + "]".repeat(40));
      case TEXT_TOO_LONG -> probe("{\"count\": \"" + "x".repeat(300_000) + "\"}");
      case NUMBER_TOO_LONG -> probe("{\"count\": " + "1".repeat(70) + "}");
      case VALUE_TOO_LARGE -> probe("{\"count\": 10}");
      case SEVERAL_FAULTS -> probe("{\"cuont\": 1, \"count\": 10, \"gain_db\": \"x\"}");
      case SUBJECT_TOO_LONG ->
          given().auth().oauth2(Tokens.booker("a".repeat(101))).get("/v1/holds");
      case UNIT_UNDER_HOLD -> retireAUnitUnderHold();
      case LINES_SHORT -> holdMoreThanThereIs();
      case STATE_CHANGED -> retire(Kit.house(), "\"7\"");
      case TOO_MUCH_AT_ONCE -> askWhileOthersAreInside();
      case TOO_OFTEN -> askUntilRefused();
    };
  }

  private static Response probe(String body) {
    return given().contentType("application/json").body(body).post("/probe");
  }

  private static Response retireAUnitUnderHold() {
    Kit kit = Kit.house();
    String serial = kit.units(MICROPHONE, 1).get(0);
    UUID hold = kit.hold(serial);
    Response refused = retire(kit, serial, "*");
    assertThat(refused.jsonPath().getString("errors[0].hold")).isEqualTo(hold.toString());
    assertThat(refused.jsonPath().getString("errors[0].detail"))
        .contains(refused.jsonPath().getString("errors[0].until"));
    return refused;
  }

  private static Response retire(Kit kit, String ifMatch) {
    return retire(kit, kit.units(MICROPHONE, 1).get(0), ifMatch);
  }

  private static Response retire(Kit kit, String serial, String ifMatch) {
    return given()
        .auth()
        .oauth2(Tokens.publisher(kit.id()))
        .header("If-Match", ifMatch)
        .delete("/v1/houses/" + kit.id() + "/units/" + serial);
  }

  private static Response holdMoreThanThereIs() {
    String line = "{\"house\":\"" + Kit.house().id() + "\",\"microphone\":\"%s\",\"quantity\":3}";
    RequestSpecification desk = given().auth().oauth2(Tokens.booker("desk-" + UUID.randomUUID()));
    return desk.contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID().toString())
        .body(
            """
            {"reference": "r", "from": "2027-06-11T10:00:00Z", "to": "2027-06-12T10:00:00Z",
             "lines": [%s, %s]}
            """
                .formatted(line.formatted(MICROPHONE), line.formatted("boathouse/ldc-multi-1")))
        .post("/v1/holds");
  }

  private static Response askWhileOthersAreInside() {
    try (StuckReaders inside = StuckReaders.of(AT_ONCE)) {
      return await()
          .until(() -> given().get("/v1/packs"), response -> response.statusCode() == 503);
    } catch (IOException | SQLException failure) {
      throw new AssertionError(failure);
    }
  }

  private static Response askUntilRefused() {
    Response last = given().get("/v1/packs");
    for (int i = 0; i < IN_AN_HOUR && last.statusCode() != 429; i++) {
      last = given().get("/v1/packs");
    }
    assertThat(last.jsonPath().getLong("window_s")).isEqualTo(3600);
    assertThat(last.jsonPath().getList("violated_policies", String.class))
        .as("as 'RateLimit-Policy' names them")
        .allSatisfy(
            policy ->
                assertThat(given().get("/v1/packs").header("RateLimit-Policy"))
                    .startsWith('"' + policy + '"'));
    return last;
  }
}
