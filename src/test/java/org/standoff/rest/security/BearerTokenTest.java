package org.standoff.rest.security;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Tokens;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class BearerTokenTest {

  @Test
  void aTokenTellsSubjectRolesAndHouse() {
    with(Tokens.publisher("alder"))
        .then()
        .statusCode(200)
        .body("subject", equalTo("alder"))
        .body("roles", contains("publisher"))
        .body("house", equalTo("alder"));
  }

  @Test
  void withoutATokenTheAnswerIs401AndNamesTheScheme() {
    Response answer = given().get("/guarded/somebody");
    answer.then().statusCode(401).body("code", equalTo("UNAUTHENTICATED"));
    assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer realm=\"standoff\"");
  }

  @Test
  void whatIsOpenIsToldWithoutAToken() {
    given().get("/guarded/anybody").then().statusCode(200).body("subject", equalTo("nobody"));
  }

  @Test
  void anotherHouseIs403() {
    Response answer = given().auth().oauth2(Tokens.publisher("alder")).put("/guarded/birch");
    answer.then().statusCode(403).body("code", equalTo("FORBIDDEN"));
    assertThat(answer.header("WWW-Authenticate"))
        .isEqualTo("Bearer realm=\"standoff\", error=\"insufficient_scope\"");
  }

  @Test
  void anotherRoleIs403() {
    given().auth().oauth2(Tokens.booker("desk")).put("/guarded/alder").then().statusCode(403);
  }

  private static Response with(String token) {
    return given().auth().oauth2(token).get("/guarded/somebody");
  }
}
