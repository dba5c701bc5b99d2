package org.standoff.rest.stereo;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Golden;

/** Pictures as they were last looked at in a browser. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class StereoPicturesTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "pictures");

  @ParameterizedTest
  @ValueSource(strings = {"pair", "images", "mono"})
  void theHornLineLooksAsItDid(String picture) throws IOException {
    Golden.check(
        FOLDER.resolve("horn-line-" + picture + ".svg"),
        drawn("/v1/stereo/geometry", with(StereoExamples.HORN_LINE, picture)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pair", "images", "mono"})
  void aPairWithTheDrumsBehindLooksAsItDid(String picture) throws IOException {
    Golden.check(
        FOLDER.resolve("figure-8s-" + picture + ".svg"),
        drawn("/v1/stereo/geometry", with(StereoExamples.CROSSED_FIGURE_8S, picture)));
  }

  @Test
  void theBestOfAFitLooksAsItDid() throws IOException {
    Golden.check(
        FOLDER.resolve("long-bar-pair.svg"), drawn("/v1/stereo/fit", StereoExamples.LONG_BAR));
  }

  @Test
  void aFitThatFailsHasNothingToDraw() {
    given()
        .contentType("application/json")
        .accept("image/svg+xml")
        .body(StereoExamples.SHORT_BAR)
        .post("/v1/stereo/fit")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors[0].pointer", equalTo("/wish"));
  }

  @Test
  void aNameOfASourceStaysText() {
    String drawn =
        drawn(
            "/v1/stereo/geometry",
            """
            {"pair": "core/spaced-omnis",
             "sources": [{"id": "<script>alert(1)</script>", "azimuth_deg": 20}]}
            """);
    assertThat(drawn).doesNotContain("<script").contains("&lt;script&gt;");
  }

  @Test
  void manySourcesInOnePlaceAreToldApart() {
    StringBuilder query = new StringBuilder("?pair=core/three-omni-tree&distance_m=3");
    for (int i = 0; i < 40; i++) {
      query.append("&azimuth_deg=").append(20 + i * 0.01);
    }
    String drawn = given().accept("image/svg+xml").get("/v1/stereo/geometry" + query).asString();
    assertThat(drawn).contains(">40</text>");
    assertThat(drawn.lines().filter(line -> line.startsWith("<circle")).distinct())
        .hasSizeGreaterThan(40);
  }

  private static String with(String question, String picture) {
    return question.replaceFirst("\\{", "{\"picture\": \"" + picture + "\",");
  }

  private static String drawn(String path, String question) {
    return given()
        .contentType("application/json")
        .accept("image/svg+xml")
        .body(question)
        .post(path)
        .then()
        .statusCode(200)
        .contentType("image/svg+xml")
        .extract()
        .asString();
  }
}
