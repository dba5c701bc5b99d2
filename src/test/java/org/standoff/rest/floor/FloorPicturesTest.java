package org.standoff.rest.floor;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Golden;

/** Pictures as they were last looked at in a browser. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class FloorPicturesTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "pictures");
  private static final Path DEMO = Path.of("openapi", "examples", "boathouse-floor.json");

  @ParameterizedTest
  @ValueSource(strings = {"plan", "matrix"})
  void theDemosFloorLooksAsItDid(String picture) throws IOException {
    Golden.check(
        FOLDER.resolve("boathouse-" + picture + ".svg"),
        drawn(with(Files.readString(DEMO), picture)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "matrix"})
  void aNameStaysText(String picture) {
    String drawn = drawn(with(FloorExamples.INLINE.replace("\"kit\"", "\"<script>kit\""), picture));
    assertThat(drawn).doesNotContain("<script").contains("&lt;script&gt;");
  }

  @Test
  void manyMicrophonesInOnePlaceAreToldApart() {
    StringBuilder microphones = new StringBuilder();
    for (int i = 0; i < 30; i++) {
      microphones
          .append(i == 0 ? "" : ",")
          .append("{\"id\": \"m")
          .append(i)
          .append("\", \"pattern\": \"cardioid\", \"position_m\": {\"x\": 5, \"y\": ")
          .append(4 + 0.01 * i)
          .append(", \"z\": 1}}");
    }
    String drawn =
        drawn(
            """
            {"floor": {"room": "core/hall", "microphones": [%s],
             "sources": [{"id": "one", "source": "core/violin",
                          "position_m": {"x": 3, "y": 3, "z": 1}}]}}
            """
                .formatted(microphones));
    assertThat(drawn).contains(">AD</text>");
    assertThat(drawn.lines().filter(line -> line.startsWith("<rect")).distinct())
        .hasSizeGreaterThan(30);
  }

  private static String with(String question, String picture) {
    return question.replaceFirst("\\{", "{\"picture\": \"" + picture + "\",");
  }

  private static String drawn(String question) {
    return given()
        .contentType("application/json")
        .accept("image/svg+xml")
        .body(question)
        .post("/v1/floor/bleed")
        .then()
        .statusCode(200)
        .contentType("image/svg+xml")
        .extract()
        .asString();
  }
}
