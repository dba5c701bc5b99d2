package org.standoff.kit;

import static io.restassured.RestAssured.given;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class DatabaseHealthTest {

  @Test
  void showsTheServerUpAndItsTablesReady() {
    await()
        .untilAsserted(
            () ->
                given()
                    .get("/q/health/ready")
                    .then()
                    .statusCode(200)
                    .body("status", equalTo("UP"))
                    .body("checks.find { it.name == 'database' }.data.server", equalTo("up"))
                    .body("checks.find { it.name == 'database' }.data.tables", equalTo("ready")));
  }
}
