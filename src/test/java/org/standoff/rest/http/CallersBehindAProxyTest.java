package org.standoff.rest.http;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.SetOtherwise;

/** Behind a proxy that is named, callers are those that it names. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(SetOtherwise.class)
class CallersBehindAProxyTest {

  @Test
  void eachIsCountedByTheAddressThatTheProxyNames() {
    int first = left("192.0.2.7");
    assertThat(left("192.0.2.7")).isEqualTo(first - 1);
    assertThat(left("192.0.2.8")).isEqualTo(SetOtherwise.REQUESTS - 1);
    assertThat(left("192.0.2.7")).isEqualTo(first - 2);
  }

  @Test
  void anIpv6NetworkIsOneCaller() {
    int first = left("2001:db8:7:1::5");
    assertThat(left("2001:db8:7:1::6")).isEqualTo(first - 1);
    assertThat(left("2001:db8:7:2::5")).isEqualTo(SetOtherwise.REQUESTS - 1);
  }

  @Test
  void whatIsNoAddressIsACallerToo() {
    int first = left("unknown");
    assertThat(left("unknown")).isEqualTo(first - 1);
  }

  /** Who is not among the proxies that are named forwards nothing. */
  @Test
  void aProxyThatIsNotNamedIsNotBelieved() throws IOException {
    int first = leftFromElsewhere("192.0.2.101");
    assertThat(leftFromElsewhere("192.0.2.102")).isEqualTo(first - 1);
  }

  /** The same from an address of this machine that is not the proxy's. */
  private static int leftFromElsewhere(String forwardedFor) throws IOException {
    InetAddress elsewhere = InetAddress.getByName("127.0.0.2");
    try (Socket socket =
        new Socket(InetAddress.getLoopbackAddress(), RestAssured.port, elsewhere, 0)) {
      String request =
          "GET /v1/packs HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nX-Forwarded-For: %s\r\n\r\n"
              .formatted(forwardedFor);
      socket.getOutputStream().write(request.getBytes(ISO_8859_1));
      String answer = new String(socket.getInputStream().readAllBytes(), ISO_8859_1);
      return Integer.parseInt(answer.replaceAll("(?s).*\"requests\";r=(\\d+);.*", "$1"));
    }
  }

  /** How many requests are left to whoever this is said to be. */
  private static int left(String forwardedFor) {
    String told =
        given().header("X-Forwarded-For", forwardedFor).get("/v1/packs").header("RateLimit");
    return Integer.parseInt(told.replaceAll(".*;r=(\\d+);.*", "$1"));
  }
}
