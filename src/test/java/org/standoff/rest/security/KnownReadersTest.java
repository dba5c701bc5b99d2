package org.standoff.rest.security;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Tokens;

/** A service that answers nobody whom it doesn't know. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(KnownReadersTest.Closed.class)
class KnownReadersTest {
  private static final String ITEM = "/v1/microphones/core/ldc-multi-1";

  /** The setting. */
  public static class Closed implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("standoff.tokens.needed-to-read", "true");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {ITEM, "/v1/packs", "//v1/packs", "/%761/packs"})
  void aReaderWithoutATokenIsToldNothing(String address) {
    given().urlEncodingEnabled(false).get(address).then().statusCode(401);
  }

  @Test
  void whatIsOnlyForKnownReadersIsKeptByNoSharedCache() {
    given()
        .auth()
        .oauth2(Tokens.booker("north-desk"))
        .get(ITEM)
        .then()
        .statusCode(200)
        .header("Cache-Control", startsWith("private, max-age="));
  }

  @Test
  void whatExplainsTheServiceStaysOpen() {
    given().get("/schemas/microphone.json").then().statusCode(200);
  }
}
