package org.standoff.rest.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class RetiringHeadersTest {

  /** RFC 9745 wants a structured date, RFC 8594 an HTTP date: 2027-01-31 and 2028-01-31. */
  @Test
  void anOperationThatWillGoSaysSo() {
    Response answer = given().get("/probe/retiring");
    answer
        .then()
        .statusCode(200)
        .header("Deprecation", equalTo("@1801353600"))
        .header("Sunset", equalTo("Mon, 31 Jan 2028 00:00:00 GMT"));
    assertThat(answer.headers().getValues("Link"))
        .contains(
            "</openapi>; rel=\"deprecation\"",
            "</openapi>; rel=\"sunset\"",
            "</probe/items>; rel=\"successor-version\"");
  }

  @Test
  void anyOtherSaysNothing() {
    given()
        .get("/probe/items")
        .then()
        .statusCode(200)
        .header("Deprecation", nullValue())
        .header("Sunset", nullValue());
  }
}
