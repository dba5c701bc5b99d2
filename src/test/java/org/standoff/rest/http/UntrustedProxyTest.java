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

/** Who is not among the proxies that are named forwards nothing. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(UntrustedProxyTest.Elsewhere.class)
class UntrustedProxyTest {

  /** The settings. */
  public static class Elsewhere implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of(
          "standoff.limits.rate.requests",
          "1000",
          "standoff.limits.rate.window",
          "24h",
          "quarkus.http.proxy.proxy-address-forwarding",
          "true",
          "quarkus.http.proxy.trusted-proxies",
          "198.51.100.1");
    }
  }

  @Test
  void aForwardedAddressChangesNothing() {
    int first = left("192.0.2.7");
    assertThat(left("192.0.2.8")).isEqualTo(first - 1);
  }

  /** How many requests are left to whoever this is said to be. */
  private static int left(String forwardedFor) {
    String told =
        given().header("X-Forwarded-For", forwardedFor).get("/v1/packs").header("RateLimit");
    return Integer.parseInt(told.replaceAll(".*;r=(\\d+);.*", "$1"));
  }
}
