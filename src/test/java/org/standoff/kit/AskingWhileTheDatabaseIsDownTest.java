package org.standoff.kit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;

/** Only what asks for kit waits for the database. */
@QuarkusTest
@TestProfile(DatabaseDownTest.ClosedPort.class)
class AskingWhileTheDatabaseIsDownTest {
  private static final Map<String, Object> FRIDAY_TO_MONDAY =
      Map.of("from", "2027-06-11T10:00:00+02:00", "to", "2027-06-14T11:00:00+02:00");
  private static final Ask SETTINGS =
      Ask.settings()
          .with("source", "core/violin")
          .with("placement", "spot")
          .with("distance_m", 1)
          .with("microphone", "core/sdc-card-1")
          .with("preamp", "core/preamp-16");
  private static final Ask FIT =
      Ask.at("/v1/stereo/fit")
          .with("ensemble", "boathouse/saltlight-twelve")
          .with("player_ids", List.of("trumpet", "alto", "trombone"))
          .with("stand", Map.of("position_m", Map.of("x", 9.1, "y", 6.7, "z", 2)))
          .with("bar_most_m", 0.6)
          .with("pack", "boathouse")
          .with("wish", Map.of("fill_pct", 97));

  @Test
  void settingsAreAnsweredUnlessTheyAskForWhatIsFree() {
    SETTINGS.send().then().statusCode(200);
    assertUnavailable(SETTINGS.with("available", FRIDAY_TO_MONDAY));
  }

  @Test
  void aFitIsAnsweredUnlessItAsksForWhatIsFree() {
    FIT.send().then().statusCode(200);
    assertUnavailable(FIT.with("available", FRIDAY_TO_MONDAY));
  }

  @Test
  void availabilityIsToldWhenToComeAgain() {
    assertUnavailable(
        Ask.at("/v1/availability")
            .with("microphone", "core/sdc-card-1")
            .with("from", FRIDAY_TO_MONDAY.get("from"))
            .with("to", FRIDAY_TO_MONDAY.get("to")));
    given()
        .queryParam("microphone", "core/sdc-card-1")
        .queryParam("from", "2027-06-11T08:00:00Z")
        .queryParam("to", "2027-06-14T09:00:00Z")
        .get("/v1/availability")
        .then()
        .statusCode(503);
  }

  private static void assertUnavailable(Ask ask) {
    String retry =
        ask.send()
            .then()
            .statusCode(503)
            .contentType("application/problem+json")
            .header("Cache-Control", equalTo("no-store"))
            .extract()
            .header("Retry-After");
    assertThat(Integer.parseInt(retry)).isPositive();
  }
}
