package org.standoff.rest;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class IndexResourceTest {

  @Test
  void theBareAddressLeadsToTheDescriptionAndTheHealth() {
    given()
        .get("/")
        .then()
        .statusCode(200)
        .body("title", equalTo("Standoff"))
        .body("links.href", hasItems("/openapi", "/q/health", "/v1/packs"));
    given().get("/openapi").then().statusCode(200);
    given().get("/q/health").then().statusCode(200);
  }

  @Test
  void theApiCatalogStandsAtItsWellKnownPlace() {
    given()
        .get("/.well-known/api-catalog")
        .then()
        .statusCode(200)
        .contentType("application/linkset+json")
        .body("linkset[0].'service-desc'[0].href", equalTo("/openapi"))
        .body("linkset[0].status[0].href", equalTo("/q/health"));
  }
}
