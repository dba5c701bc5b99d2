package org.standoff.launch;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

@QuarkusIntegrationTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class PackagedServiceIT {

  @Test
  void theBuiltServiceIsReady() {
    given().get("/q/health/ready").then().statusCode(200).body("status", equalTo("UP"));
  }
}
