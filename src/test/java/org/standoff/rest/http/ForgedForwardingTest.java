package org.standoff.rest.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

/** Nobody gets a share of its own by saying so: nothing is forwarded where no setting says it. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(ForgedForwardingTest.Counted.class)
class ForgedForwardingTest {

  /** The settings. */
  public static class Counted implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("standoff.limits.rate.requests", "1000", "standoff.limits.rate.window", "24h");
    }
  }

  @Test
  void aForwardedAddressChangesNothing() {
    int first = left("192.0.2.7");
    assertThat(left("192.0.2.8")).isEqualTo(first - 1);
    assertThat(left("2001:db8:7:2::5")).isEqualTo(first - 2);
  }

  /** How many requests are left to whoever this is said to be. */
  private static int left(String forwardedFor) {
    String told =
        given().header("X-Forwarded-For", forwardedFor).get("/v1/packs").header("RateLimit");
    return Integer.parseInt(told.replaceAll(".*;r=(\\d+);.*", "$1"));
  }
}
