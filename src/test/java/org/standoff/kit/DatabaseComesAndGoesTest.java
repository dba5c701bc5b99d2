package org.standoff.kit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.microprofile.config.ConfigProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.Tokens;
import org.standoff.launch.EmbeddedDatabase;
import org.standoff.launch.StartNotice;

/** Without its database the service calculates on and says what is missing; it needs no restart. */
@QuarkusTest
@TestProfile(DatabaseComesAndGoesTest.NoServerYet.class)
class DatabaseComesAndGoesTest {

  private static final Duration LIMIT = Duration.ofMinutes(1);

  @TempDir Path folder;

  @Test
  void kitIsUnavailableWhileTheDatabaseIsAndBackWithIt() throws IOException {
    String calculated = calculated();
    assertDown(calculated);
    try (EmbeddedDatabase first = EmbeddedDatabase.inFolder(folder, port())) {
      await().atMost(LIMIT).untilAsserted(() -> assertUp(calculated));
    }
    assertDown(calculated);
    try (EmbeddedDatabase again = EmbeddedDatabase.inFolder(folder, port())) {
      await().atMost(LIMIT).untilAsserted(() -> assertUp(calculated));
    }
  }

  private static void assertDown(String calculated) {
    assertThat(calculated()).isEqualTo(calculated);
    assertThat(server()).isEqualTo("down");
    for (String path : new String[] {"/v1/holds", "/v1/events", "/v1/houses"}) {
      Response refused = given().auth().oauth2(Tokens.booker("north-desk")).get(path);
      assertThat(refused.statusCode()).as(path + refused.asString()).isEqualTo(503);
      assertThat(refused.header("Retry-After")).as(path).isNotEmpty();
      assertThat(refused.jsonPath().getString("code")).isEqualTo("UNAVAILABLE");
    }
  }

  private static void assertUp(String calculated) {
    assertThat(calculated()).isEqualTo(calculated);
    assertThat(server()).isEqualTo("up");
    given().auth().oauth2(Tokens.booker("north-desk")).get("/v1/holds").then().statusCode(200);
  }

  private static String calculated() {
    return given().get(StartNotice.TRY_PATH).then().statusCode(200).extract().asString();
  }

  private static String server() {
    return given()
        .get("/q/health/ready")
        .then()
        .statusCode(200)
        .extract()
        .path("checks.find { it.name == 'database' }.data.server");
  }

  private static int port() {
    String url = ConfigProvider.getConfig().getValue("quarkus.datasource.jdbc.url", String.class);
    return Integer.parseInt(url.replaceAll(".*:(\\d+)/.*", "$1"));
  }

  /** A port on which a server will listen later. */
  public static class NoServerYet implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      Map<String, String> settings = new HashMap<>(EmbeddedDatabase.settings(freePort()));
      settings.putAll(Tokens.settings());
      return settings;
    }

    private static int freePort() {
      try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        return socket.getLocalPort();
      } catch (IOException none) {
        throw new UncheckedIOException(none);
      }
    }

    @Override
    public boolean disableGlobalTestResources() {
      return true;
    }
  }
}
