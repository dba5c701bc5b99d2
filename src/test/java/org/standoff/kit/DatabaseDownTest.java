package org.standoff.kit;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The service starts although the server that it was given does not answer, and says so. */
@QuarkusTest
@TestProfile(DatabaseDownTest.ClosedPort.class)
class DatabaseDownTest {

  @Test
  void readinessStaysUpAndTheBodySaysThatTheServerIsDown() {
    given()
        .get("/q/health/ready")
        .then()
        .statusCode(200)
        .body("status", equalTo("UP"))
        .body("checks.find { it.name == 'database' }.data.server", equalTo("down"))
        .body("checks.find { it.name == 'database' }.data.tables", equalTo("not ready"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/v1/houses", "/v1/houses/x", "/v1/houses/x/units", "/v1/houses/x/units/y"})
  void kitIsUnavailableForAWhileAndTheCatalogueIsNot(String path) {
    given()
        .get(path)
        .then()
        .statusCode(503)
        .contentType("application/problem+json")
        .header("Retry-After", equalTo("5"))
        .body("retry_after_s", equalTo(5));
    given().get("/v1/microphones/core/dyn-card-1").then().statusCode(200);
  }

  /** Port 1 is reserved by IANA for a service that nobody runs. */
  public static class ClosedPort implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of(
          "quarkus.datasource.jdbc.url", "jdbc:postgresql://127.0.0.1:1/standoff",
          "quarkus.datasource.username", "nobody",
          "quarkus.datasource.password", "nothing");
    }

    @Override
    public boolean disableGlobalTestResources() {
      return true;
    }
  }
}
