package org.standoff.kit;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/**
 * The database's disk is full, for one house: a trigger raises what PostgreSQL raises then (53100,
 * disk_full; PostgreSQL 17, appendix A), because a full disk would end the other tests too.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class DiskFullTest {
  private final Kit kit = Kit.house();
  private final String unit = "/v1/houses/" + kit.id() + "/units/N1";

  @BeforeEach
  void fill() {
    Kit.sql(
        "create function disk_full() returns trigger language plpgsql as $$ begin"
            + " raise exception 'could not extend file: No space left on device'"
            + " using errcode = '53100'; end $$");
    Kit.sql(
        "create trigger disk_full before insert or update on unit for each row when (new.house = '"
            + kit.id()
            + "') execute function disk_full()");
  }

  @AfterEach
  void makeRoom() {
    Kit.sql("drop function if exists disk_full() cascade");
  }

  @Test
  void storingIsRefusedForNowReadingGoesOnAndWithRoomAllIsWell() {
    put()
        .statusCode(503)
        .contentType("application/problem+json")
        .header("Retry-After", notNullValue())
        .body("code", equalTo("UNAVAILABLE"))
        .body("detail", containsString("no room left"));
    given().get(unit).then().statusCode(404);
    given().get("/v1/houses/" + kit.id()).then().statusCode(200);
    given().get("/q/health/ready").then().statusCode(200);

    makeRoom();
    put().statusCode(201);
    given().get(unit).then().statusCode(200);
  }

  private ValidatableResponse put() {
    return given()
        .auth()
        .oauth2(Tokens.admin())
        .contentType("application/json")
        .body("{\"microphone\": \"boathouse/sdc-omni-1\", \"day_rate_minor\": 900}")
        .put(unit)
        .then();
  }
}
