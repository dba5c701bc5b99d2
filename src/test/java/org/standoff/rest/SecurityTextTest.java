package org.standoff.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.SetOtherwise;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(SetOtherwise.class)
class SecurityTextTest {

  /** The fields and their form: RFC 9116, 2.5.3, 2.5.5 and 2.5.8. */
  @Test
  void whomToTellOfAWeaknessIsAtTheWellKnownAddress() {
    List<String> lines =
        given()
            .get("/.well-known/security.txt")
            .then()
            .statusCode(200)
            .contentType("text/plain;charset=UTF-8")
            .extract()
            .asString()
            .lines()
            .toList();
    assertThat(lines)
        .hasSize(4)
        .startsWith(
            "Contact: mailto:security@desk.example.org", "Contact: https://desk.example.org/report")
        .endsWith("Preferred-Languages: en");
    Instant expires = Instant.parse(lines.get(2).substring("Expires: ".length()));
    assertThat(expires)
        .isAfter(Instant.now().plus(Duration.ofDays(100)))
        .isBefore(Instant.now().plus(Duration.ofDays(365)));
  }

  @Test
  void theTextStaysAsItIsForADay() {
    assertThat(SecurityTextResource.expires(Instant.parse("2027-03-01T00:00:00Z")))
        .isEqualTo(SecurityTextResource.expires(Instant.parse("2027-03-01T23:59:59Z")))
        .isEqualTo(Instant.parse("2027-08-28T00:00:00Z"));
  }
}
