package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;

/**
 * A folder of packs goes away, as a share on a network does, and comes back: what was read last
 * answers meanwhile, also where the service ships another edition of the same pack, and health says
 * what is missing.
 */
@QuarkusTest
@TestProfile(FaultyPackWhileAskingTest.OwnFolder.class)
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class VanishedFolderTest {

  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Path FOLDER = FaultyPackWhileAskingTest.OwnFolder.FOLDER;
  private static final String MICROPHONE = "boathouse/microphones/ldc-multi-1.yaml";

  @Test
  void whatWasReadLastAnswersUntilTheFolderIsBack() throws Exception {
    String ours = "Ours of the folder";
    Path file = FOLDER.resolve(MICROPHONE);
    String before = Files.readString(file);
    Files.writeString(file, before.replaceFirst("title: .*", "title: " + ours));
    await().atMost(PATIENCE).until(() -> title().equals(ours));

    Path away = FOLDER.resolveSibling(FOLDER.getFileName() + "-away");
    Files.move(FOLDER, away);
    await()
        .atMost(PATIENCE)
        .until(() -> health().path("unread_folders").asText().equals(FOLDER.toString()));
    assertThat(health().path("faulty").asText()).isEqualTo("boathouse");
    assertThat(title()).isEqualTo(ours);

    Files.move(away, FOLDER);
    await().atMost(PATIENCE).until(() -> health().path("unread_folders").asText().isEmpty());
    assertThat(health().path("faulty_packs").asInt()).isZero();
    assertThat(title()).isEqualTo(ours);
    Files.writeString(file, before);
    await().atMost(PATIENCE).until(() -> !title().equals(ours));
  }

  private static String title() {
    return Ask.tree(
            given()
                .get("/v1/microphones/boathouse/ldc-multi-1")
                .then()
                .statusCode(200)
                .extract()
                .asString())
        .path("title")
        .asText();
  }

  /** What the catalogue says about itself; the instance stays in service. */
  private static JsonNode health() {
    JsonNode checks =
        Ask.tree(given().get("/q/health/ready").then().statusCode(200).extract().asString())
            .path("checks");
    for (JsonNode check : checks) {
      if (check.path("name").asText().equals("catalogue")) {
        return check.path("data");
      }
    }
    throw new AssertionError(checks);
  }
}
