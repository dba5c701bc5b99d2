package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.fixture.EmbeddedDatabaseResource;

/**
 * The horn line of the Saltlight Twelve and the figures that belong to it, asked as a desk asks.
 * Figures at the end of the line are derived from exact distances and the polar equation.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class StereoOverHttpTest {
  private static final String GEOMETRY = "/v1/stereo/geometry";
  private static final String FIT = "/v1/stereo/fit";

  /** End of a line 3 m wide that stands 2.5 m away, and its mirror image. */
  private static final String ENDS_OF_THE_LINE =
      """
      "sources": [
        {"id": "left", "position_m": {"x": -1.5, "y": 2.5, "z": 0}},
        {"id": "right", "position_m": {"x": 1.5, "y": 2.5, "z": 0}}],
      "place": {"position_m": {"x": 0, "y": 0, "z": 0}}, "temperature_c": 21,
      "models": ["core/straight-trade", "core/two-region"]""";

  private static final String PLAYERS_ON_THE_LINE =
      """
      "players": [
        {"id": "left", "position_m": {"x": -1.5, "y": 2.5, "z": 0}},
        {"id": "middle", "position_m": {"x": 0, "y": 2.5, "z": 0}},
        {"id": "right", "position_m": {"x": 1.5, "y": 2.5, "z": 0}}],
      "stand": {"position_m": {"x": 0, "y": 0, "z": 0}}, "temperature_c": 21,
      "models": ["core/straight-trade", "core/two-region"]""";

  private static final String HORNS =
      """
      "place": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}, "facing_azimuth_deg": -90},
      "ensemble": "boathouse/saltlight-twelve",
      "models": ["core/straight-trade", "core/two-region"]""";

  /** Straight trade: 100 (dL/15 dB + dt/1.12 ms) with exact distances, c = 343.8 m/s. */
  @ParameterizedTest
  @CsvSource({
    "core/spaced-directional, 0.4, 120, 97.3",
    "core/near-coincident, 0.2, 130, 71.4",
  })
  void theEndOfTheLineLandsWhereTheStraightTradeSays(
      String pair, String spacing, String angle, double positionPct) {
    JsonPath answer =
        ask(
            GEOMETRY,
            "{\"pair\": \"%s\", \"spacing_m\": %s, \"angle_deg\": %s, %s}"
                .formatted(pair, spacing, angle, ENDS_OF_THE_LINE));
    assertThat(image(answer, 0, "core/straight-trade")).isCloseTo(positionPct, within(0.2));
    assertThat(image(answer, 1, "core/straight-trade")).isCloseTo(-positionPct, within(0.2));
  }

  @Test
  void crossedFigure8sReachEightyPerCentByBothModels() {
    JsonPath answer =
        ask(GEOMETRY, "{\"pair\": \"core/crossed-figure-8s\", %s}".formatted(ENDS_OF_THE_LINE));
    assertThat(image(answer, 0, "core/straight-trade")).isCloseTo(80.3, within(0.2));
    assertThat(image(answer, 0, "core/two-region")).isCloseTo(80.3, within(0.7));
    assertThat(answer.getDouble("sources[0].spread_pct")).isLessThan(1.5);
  }

  @Test
  void theHornsOfTheEnsembleSpreadOverTheBase() {
    JsonPath answer =
        ask(
            GEOMETRY,
            "{\"pair\": \"core/spaced-directional\", \"spacing_m\": 0.4, \"angle_deg\": 120,"
                + "\"players\": [\"trombone\", \"alto\", \"trumpet\"], "
                + HORNS
                + "}");
    assertThat(image(answer, 0, "core/straight-trade")).isBetween(93.0, 98.0);
    assertThat(image(answer, 1, "core/straight-trade")).isCloseTo(0, within(0.01));
    assertThat(image(answer, 2, "core/straight-trade")).isBetween(-98.0, -93.0);
    // distances as the session sheet has them
    assertThat(answer.getDouble("sources[0].distance_m")).isCloseTo(2.98, within(0.005));
    assertThat(answer.getDouble("sources[1].distance_m")).isCloseTo(2.66, within(0.005));
    assertThat(answer.getDouble("sources[2].distance_m")).isCloseTo(2.96, within(0.005));
    assertThat(answer.getString("pair.room")).isEqualTo("boathouse/hall");
    assertThat(answer.getList("sources[0].room")).hasSize(2);
  }

  @Test
  void crossedFigure8sHearTheDrumsTurnedOver() {
    JsonPath answer =
        ask(
            GEOMETRY,
            "{\"pair\": \"core/crossed-figure-8s\", \"players\": [\"alto\", \"drums\"],"
                + HORNS
                + "}");
    List<Map<String, Object>> flags = answer.getList("flags");
    assertThat(flags)
        .anySatisfy(
            flag -> {
              assertThat(flag.get("code")).isEqualTo("inverted-polarity");
              assertThat(flag.get("sources")).isEqualTo(List.of("drums"));
            })
        .anySatisfy(flag -> assertThat(flag.get("code")).isEqualTo("behind-the-pair"));
    assertThat(answer.getString("sources[1].channels[0].polarity")).isEqualTo("inverted");
  }

  @Test
  void whatLiesBesideAFigure8PairComesInOppositePolarity() {
    JsonPath answer =
        JsonPath.from(
            given().get(GEOMETRY + "?pair=core/crossed-figure-8s&azimuth_deg=70").asString());
    assertThat(answer.getBoolean("sources[0].opposite_polarity")).isTrue();
    // in one point there is no time difference, so it thins out at all frequencies alike:
    // 20 lg((cos 25° + cos 115°)/√(2 (cos² 25° + cos² 115°)))
    assertThat(answer.getDouble("sources[0].mono.loss_db")).isCloseTo(9.32, within(0.01));
    assertThat((Object) answer.get("sources[0].mono.first_notch_hz")).isNull();
    assertThat(answer.getString("flags[0].code")).isEqualTo("opposite-polarity");
  }

  /** Limit curve 97.1° and two-region function 113.3°, both derived at 343.2 m/s. */
  @Test
  void recordingAnglesOfDifferentStudiesStandSideBySide() {
    JsonPath answer =
        JsonPath.from(given().get(GEOMETRY + "?pair=core/near-coincident-17-110").asString());
    assertThat(recordingAngle(answer, "core/limit-polyline")).isCloseTo(97.1, within(0.3));
    assertThat(recordingAngle(answer, "core/two-region")).isCloseTo(113.3, within(0.3));
    assertThat(answer.getBoolean("recording_angles[0].criterion")).isTrue();
    assertThat(answer.getString("recording_angles[0].study")).contains("Williams");
    assertThat(answer.getDouble("recording_angle_spread_deg")).isGreaterThan(16);
  }

  /** Image less source times 30° over half the recording angle; Williams 1987. */
  @Test
  void angularDistortionIsHeldAgainstTheCriterion() {
    JsonPath answer =
        JsonPath.from(
            given()
                .get(
                    GEOMETRY
                        + "?pair=core/near-coincident-17-110&azimuth_deg=24&models=core/two-region")
                .asString());
    double image = answer.getDouble("sources[0].images[0].image_deg");
    double total = answer.getDouble("recording_angles[0].total_deg");
    assertThat(answer.getDouble("sources[0].images[0].angular_distortion_deg"))
        .isCloseTo(image - 24 * 30 / (total / 2), within(0.02));
  }

  /** Mid cardioid with side gain 1: axes 126.9° apart, omni part 0.309; derived. */
  @Test
  void midAndSideIsToldAsThePairThatItAmountsTo() {
    JsonPath answer =
        JsonPath.from(given().get(GEOMETRY + "?pair=core/mid-side&side_gain=1").asString());
    assertThat(answer.getDouble("equivalent_pair.angle_deg")).isCloseTo(126.87, within(0.01));
    assertThat(answer.getDouble("equivalent_pair.omni_part")).isCloseTo(0.309, within(0.001));
  }

  /** Diffuse correlation 0.75 and mono −1.12 dB at 45°, coincident cardioids at 90°; derived. */
  @Test
  void aCoincidentPairHasNoNotchAndFoldsAsItsPolarEquationSays() {
    JsonPath answer =
        JsonPath.from(
            given().get(GEOMETRY + "?pair=core/coincident-cardioids-90&azimuth_deg=45").asString());
    assertThat(answer.getDouble("sources[0].level_difference_db")).isCloseTo(6.02, within(0.01));
    assertThat(answer.getDouble("sources[0].time_difference_ms")).isZero();
    assertThat(answer.getDouble("sources[0].mono.band_db.'1k'")).isCloseTo(-1.12, within(0.01));
    assertThat(answer.getDouble("diffuse[0].correlation.'1k'")).isCloseTo(0.75, within(0.002));
    assertThat(answer.getList("mono.directions.first_notch_hz")).containsOnlyNulls();
  }

  @Test
  void tapeAndProtractorPutThePairUp() {
    JsonPath answer =
        ask(
            GEOMETRY,
            "{\"pair\": \"core/spaced-directional\", \"spacing_m\": 0.4, \"angle_deg\": 120,"
                + "\"players\": [\"alto\"], "
                + HORNS
                + "}");
    // looking east, the left capsule is the northern one
    assertThat(answer.getMap("setting_out.capsules[0].position_m"))
        .isEqualTo(Map.of("x", 9.1f, "y", 6.9f, "z", 2));
    assertThat(answer.getDouble("setting_out.capsules[0].from_bar_deg"))
        .isCloseTo(30, within(0.01));
    assertThat(answer.getDouble("setting_out.capsules[0].azimuth_deg"))
        .isCloseTo(-30, within(0.01));
    assertThat(answer.getDouble("setting_out.between_capsules[0].length_m")).isEqualTo(0.4);
    assertThat(answer.getDouble("setting_out.to_sources[0].length_m"))
        .isCloseTo(Math.sqrt(2.5 * 2.5 + 0.2 * 0.2 + 0.9 * 0.9), within(1e-4));
  }

  @Test
  void mirroredSourcesHaveMirroredImages() {
    JsonPath answer =
        JsonPath.from(
            given()
                .get(
                    GEOMETRY
                        + "?pair=core/near-coincident&spacing_m=0.25&angle_deg=100"
                        + "&azimuth_deg=37&azimuth_deg=-37&distance_m=1.7")
                .asString());
    List<Map<String, Object>> left = answer.getList("sources[0].images");
    for (Map<String, Object> image : left) {
      String model = (String) image.get("model");
      assertThat(image(answer, 0, model)).isEqualTo(-image(answer, 1, model));
    }
    assertThat(left).hasSizeGreaterThan(2);
  }

  @Test
  void theShortBarIsRefusedWithTheFigureThatItReaches() {
    JsonPath answer =
        ask(
            FIT,
            "{\"pairs\": [\"core/near-coincident\"], \"patterns\": [\"cardioid\"],"
                + "\"bar_most_m\": 0.2, \"wish\": {\"fill_pct\": 97}, "
                + PLAYERS_ON_THE_LINE
                + "}");
    assertThat(answer.getList("solutions")).isEmpty();
    assertThat(answer.getString("why_not[0].code")).isEqualTo("span-out-of-reach");
    assertThat(answer.getDouble("why_not[0].figures.reached_pct")).isCloseTo(71.4, within(0.2));
    assertThat(answer.getDouble("why_not[0].nearest.angle_deg")).isCloseTo(130, within(0.01));
    assertThat(answer.getDouble("why_not[0].nearest.spacing_m")).isCloseTo(0.2, within(1e-4));
  }

  @Test
  void theLongBarIsSolvedNearFortyCentimetresAndATurnOfOneTwenty() {
    JsonPath answer =
        ask(
            FIT,
            "{\"pairs\": [\"core/spaced-directional\"], \"patterns\": [\"cardioid\"],"
                + "\"bar_most_m\": 0.6, \"wish\": {\"fill_pct\": 97.3}, "
                + PLAYERS_ON_THE_LINE
                + "}");
    assertThat(answer.<Map<String, Float>>getList("solutions.parameters"))
        .anySatisfy(
            measures -> {
              assertThat(measures.get("spacing_m")).isCloseTo(0.4f, within(0.001f));
              assertThat(measures.get("angle_deg")).isCloseTo(120f, within(0.5f));
            });
  }

  /** Every solution, asked for its geometry, returns the wish within half a per cent. */
  @Test
  void askedForItsGeometryASolutionReturnsTheWish() {
    JsonPath fit =
        ask(FIT, "{\"wish\": {\"fill_pct\": 75}, \"limit\": 50, " + PLAYERS_ON_THE_LINE + "}");
    List<Map<String, Object>> solutions = fit.getList("solutions");
    assertThat(solutions).hasSizeGreaterThan(5);
    for (int i = 0; i < solutions.size(); i++) {
      StringBuilder question = new StringBuilder("{\"pair\": \"");
      question.append(fit.getString("solutions[" + i + "].pair")).append("\", \"pattern\": \"");
      question.append(fit.getString("solutions[" + i + "].pattern")).append("\", ");
      fit.<String, Object>getMap("solutions[" + i + "].parameters")
          .forEach((name, value) -> question.append("\"" + name + "\": " + value + ", "));
      JsonPath geometry = ask(GEOMETRY, question + ENDS_OF_THE_LINE + "}");
      double fill =
          (image(geometry, 0, "core/straight-trade") - image(geometry, 1, "core/straight-trade"))
              / 2;
      assertThat(fill).as(question.toString()).isCloseTo(75, within(0.5));
    }
  }

  @Test
  void whoIsNotToBeSpreadIsHeardToo() {
    JsonPath answer =
        ask(
            FIT,
            """
            {"ensemble": "boathouse/saltlight-twelve", "player_ids": ["trumpet", "alto", "trombone"],
             "stand": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}},
             "pairs": ["core/crossed-figure-8s"],
             "models": ["core/straight-trade"], "wish": {"fill_pct": 79, "fill_within_pct": 3}}
            """);
    assertThat(answer.getDouble("solutions[0].place.facing_azimuth_deg")).isEqualTo(-90);
    assertThat(answer.getDouble("solutions[0].fill_pct")).isBetween(76.0, 82.0);
    assertThat(answer.<Map<String, Object>>getList("solutions[0].gives_up"))
        .anySatisfy(
            cost -> {
              assertThat(cost.get("code")).isEqualTo("inverted-polarity");
              assertThat((String) cost.get("detail")).contains("drums");
            });
  }

  @Test
  void limitsOnMonoAndRoomAreKept() {
    JsonPath answer =
        ask(
            FIT,
            """
            {"width_m": 4, "player_count": 5, "room": "core/hall", "limit": 50,
             "stand": {"distance_m": {"least": 2, "usual": 3, "most": 5}, "height_m": 1},
             "wish": {"fill_pct": 60, "mono_loss_at_most_db": 6,
                      "direct_to_reverberant_db": {"least": -10, "most": 10}}}
            """);
    assertThat(answer.<Float>getList("solutions.worst_mono_loss_db"))
        .isNotEmpty()
        .allSatisfy(loss -> assertThat(loss).isLessThanOrEqualTo(6f));
    assertThat(answer.<Float>getList("solutions.direct_to_reverberant_db"))
        .allSatisfy(room -> assertThat(room).isBetween(-10f, 10f));
  }

  @Test
  void aHighStandIsACaution() {
    String high =
        """
        {"pair": "core/spaced-omnis", "place": {"position_m": {"x": 0, "y": 0, "z": 3.2}}}
        """;
    assertThat(ask(GEOMETRY, high).getString("cautions[0].code")).isEqualTo("overhead-stand");
    assertThat(ask(GEOMETRY, high.replace("3.2", "1.6")).getList("cautions")).isEmpty();
  }

  @Test
  void theSameQuestionHasTheSameBytes() {
    String body = "{\"pair\": \"core/near-coincident-30-90\", %s}".formatted(ENDS_OF_THE_LINE);
    Response first = post(GEOMETRY, body);
    Response second = post(GEOMETRY, body);
    assertThat(first.asByteArray()).isEqualTo(second.asByteArray());
    assertThat(first.header("ETag")).isNotNull().isEqualTo(second.header("ETag"));
  }

  @Test
  void aGetAnswersAsItsPostTwinAndIsNotSentTwice() {
    String query =
        GEOMETRY
            + "?pair=core/near-coincident-17-110&azimuth_deg=30&azimuth_deg=-30&distance_m=2.5";
    Response get = given().get(query);
    String posted =
        post(
                GEOMETRY,
                """
                {"pair": "core/near-coincident-17-110", "azimuth_deg": [30, -30], "distance_m": 2.5}
                """)
            .asString();
    assertThat(get.asString()).isEqualTo(posted);
    given().header("If-None-Match", get.header("ETag")).get(query).then().statusCode(304);
  }

  @Test
  void sheetsLinesAndBatchesTellTheSame() {
    String query =
        GEOMETRY
            + "?pair=core/near-coincident-17-110&azimuth_deg=30&models=core/two-region"
            + "&models=core/straight-trade";
    List<String> sheet = given().accept("text/csv").get(query).asString().lines().toList();
    assertThat(sheet).hasSize(2);
    assertThat(sheet.get(0))
        .startsWith("source,azimuth_deg,distance_m,level_difference_db,time_difference_ms")
        .endsWith("core/two-region_pct,core/straight-trade_pct");
    // 4.878 dB and 0.248 ms, derived for 17 cm/110° and a plane wave at 30°
    assertThat(sheet.get(1)).startsWith("source-1,30,,4.88,0.2477,same,");
    assertThat(given().accept("text/plain").get(query).asString())
        .contains("level_difference_db=4.88")
        .contains("criterion=core/limit-polyline");
    String batch =
        given()
            .config(
                RestAssured.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig()
                            .encodeContentTypeAs("application/x-ndjson", ContentType.TEXT)))
            .contentType("application/x-ndjson")
            .body("{\"pair\": \"core/mid-side\"}\n{\"pair\": \"core/none\"}\n")
            .post(GEOMETRY)
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertThat(batch.lines().toList().get(0)).contains("equivalent_pair");
    assertThat(batch.lines().toList().get(1)).contains("UNKNOWN_ITEM");
  }

  @Test
  void theFitHasASheetAndALineToo() {
    String body = "{\"wish\": {\"fill_pct\": 75}, " + PLAYERS_ON_THE_LINE + "}";
    String sheet =
        given()
            .contentType("application/json")
            .accept("text/csv")
            .body(body)
            .post(FIT)
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertThat(sheet).startsWith("rank,pair,pattern,spacing_m,angle_deg");
    assertThat(sheet.lines().skip(1).findFirst().orElseThrow()).startsWith("1,core/");
    assertThat(
            given()
                .contentType("application/json")
                .accept("text/plain")
                .body(body)
                .post(FIT)
                .asString())
        .startsWith("rank=1 pair=core/");
  }

  @Test
  void whatStandsInNoCatalogueComesWithTheQuestion() {
    JsonPath answer =
        ask(
            GEOMETRY,
            """
            {"pair": {"format": 1, "title": "Own", "technique": "near-coincident",
               "capsules": [{"channel": "left", "spacings": -0.5, "angles": 0.5},
                            {"channel": "right", "spacings": 0.5, "angles": -0.5}],
               "patterns": ["cardioid"],
               "parameters": {"spacing_m": {"least": 0.1, "usual": 0.17, "most": 0.3},
                              "angle_deg": {"least": 90, "usual": 110, "most": 120}},
               "source": "ours", "mono": "combs", "room": "as cardioids do"},
             "models": [{"format": 1, "title": "Own", "method": "straight-trade",
               "study": "ours", "note": "none", "side_level_db": 15, "side_time_ms": 1.12},
               "core/straight-trade"],
             "azimuth_deg": [30]}
            """);
    assertThat(answer.getString("pair.title")).isEqualTo("Own");
    assertThat(answer.getDouble("sources[0].images[0].position_pct"))
        .isEqualTo(answer.getDouble("sources[0].images[1].position_pct"));
    assertThat(answer.getDouble("sources[0].spread_pct")).isZero();
  }

  @Test
  void capsulesAloneMakeTheSamePairAsTheirLayout() {
    JsonPath capsules =
        ask(
            GEOMETRY,
            """
            {"capsules": [
               {"channel": "left", "position_m": {"x": -0.085, "y": 0, "z": 0}, "azimuth_deg": 55,
                "pattern": "cardioid"},
               {"channel": "right", "position_m": {"x": 0.085, "y": 0, "z": 0}, "azimuth_deg": -55,
                "omni_part": 0.5}],
             "azimuth_deg": [25], "distance_m": 1.4}
            """);
    JsonPath layout =
        JsonPath.from(
            given()
                .get(GEOMETRY + "?pair=core/near-coincident-17-110&azimuth_deg=25&distance_m=1.4")
                .asString());
    assertThat(capsules.getList("sources")).isEqualTo(layout.getList("sources"));
    assertThat(capsules.getList("diffuse")).isEqualTo(layout.getList("diffuse"));
  }

  /** Every place of a fault, as the question has it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "422 | /pair | {}",
        "422 | /pair | {\"pair\": \"core/near-coincident-17-111\"}",
        "422 | /spacing_m | {\"pair\": \"core/crossed-figure-8s\", \"spacing_m\": 0.2}",
        "422 | /pair | {\"pair\": \"core/baffled-omnis\", \"spacing_m\": 0}",
        "400 | /spacing_m | {\"pair\": \"core/spaced-omnis\", \"spacing_m\": -1}",
        "400 | /spacing_m | {\"pair\": \"core/spaced-omnis\", \"spacing_m\": 1e999}",
        "400 | /azimuth_deg/0 | {\"pair\": \"core/spaced-omnis\", \"azimuth_deg\": [181]}",
        "422 | /place | {\"pair\": \"core/mid-side\", \"ensemble\": \"boathouse/saltlight-twelve\"}",
        "422 | /ensemble | {\"pair\": \"core/mid-side\", \"players\": [\"alto\"]}",
        "422 | /azimuth_deg | {\"pair\": \"core/mid-side\", \"distance_m\": 2}",
        "422 | /capsules | {\"capsules\": [{\"channel\": \"left\", \"omni_part\": 1}, {\"channel\": \"left\", \"omni_part\": 1}]}",
        "422 | /capsules/1/pattern | {\"capsules\": [{\"channel\": \"left\", \"omni_part\": 1}, {\"channel\": \"right\"}]}",
        "422 | /side_gain | {\"capsules\": [{\"channel\": \"mid\", \"omni_part\": 0.5}, {\"channel\": \"side\", \"omni_part\": 0}]}",
        "422 | /models/1 | {\"pair\": \"core/mid-side\", \"models\": [\"core/two-region\", \"core/tworegion\"]}",
        "422 | /pattern | {\"pair\": \"core/mid-side\", \"pattern\": \"omni\", \"microphone\": \"core/dyn-card-1\"}",
      })
  void whatIsWrongIsToldWithItsPlace(int status, String pointer, String body) {
    post(GEOMETRY, body)
        .then()
        .statusCode(status)
        .contentType("application/problem+json")
        .body("errors[0].pointer", equalTo(pointer));
  }

  @Test
  void aSourceOnACapsuleIsRefused() {
    post(
            GEOMETRY,
            """
            {"pair": "core/spaced-omnis", "spacing_m": 0.5,
             "sources": [{"id": "near", "azimuth_deg": 90, "distance_m": 0.25}]}
            """)
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/sources/0"))
        .body("errors[0].detail", containsString("left capsule"));
  }

  @Test
  void noSpacingAndNoAngleIsAFlagAndNoFigureIsInfinite() {
    Response response =
        post(
            GEOMETRY,
            """
            {"pair": "core/near-coincident", "spacing_m": 0, "angle_deg": 0,
             "azimuth_deg": [0, 90, 180], "distance_m": 1}
            """);
    response
        .then()
        .statusCode(200)
        .body(not(containsString("Infinity")))
        .body(not(containsString("NaN")));
    JsonPath answer = response.jsonPath();
    assertThat(answer.<String>getList("basis.validity.code"))
        .contains("no-difference", "measure-outside-layout");
    assertThat(answer.<String>getList("flags.code")).contains("no-recording-angle");
    assertThat(image(answer, 1, "core/two-region")).isZero();
  }

  @Test
  void aSourceInANullIsCappedAndFlagged() {
    JsonPath answer =
        JsonPath.from(
            given().get(GEOMETRY + "?pair=core/crossed-figure-8s&azimuth_deg=45").asString());
    assertThat(answer.getDouble("sources[0].level_difference_db")).isCloseTo(20, within(0.01));
    assertThat(answer.<String>getList("flags.code")).contains("rejection-capped");
  }

  @Test
  void playersWhoAllStandBehindAreToldAsSuch() {
    JsonPath answer =
        ask(
            FIT,
            "{\"wish\": {\"fill_pct\": 75}, "
                + PLAYERS_ON_THE_LINE.replace(
                    "\"stand\": {", "\"stand\": {\"facing_azimuth_deg\": 180, ")
                + "}");
    assertThat(answer.getList("solutions")).isEmpty();
    assertThat(answer.<String>getList("why_not.code")).containsOnly("all-behind");
  }

  @Test
  void tenThousandPlayersAreRefusedByLimit() {
    StringBuilder players = new StringBuilder();
    for (int i = 0; i < 10_000; i++) {
      players.append(i == 0 ? "" : ",");
      players.append(
          String.format(
              Locale.ROOT,
              "{\"id\":\"p%d\",\"position_m\":{\"x\":%d,\"y\":3,\"z\":1}}",
              i,
              i % 150));
    }
    String fit =
        "{\"players\": [%s], \"stand\": {\"distance_m\": {\"usual\": 2}}, \"wish\": {\"fill_pct\": 50}}";
    post(FIT, fit.formatted(players))
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/players"))
        .body("errors[0].code", equalTo("WRONG_LENGTH"));
    post(GEOMETRY, "{\"pair\": \"core/mid-side\", \"sources\": [%s]}".formatted(players))
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/sources"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "400 | /stand | {\"width_m\": 3, \"wish\": {\"fill_pct\": 50}}",
        "400 | /wish/fill_pct | {\"width_m\": 3, \"stand\": {\"distance_m\": {\"usual\": 2}}, \"wish\": {\"fill_pct\": 0}}",
        "422 | /players | {\"stand\": {\"position_m\": {\"x\": 0, \"y\": 0, \"z\": 1}}, \"wish\": {\"fill_pct\": 50}}",
        "422 | /stand/position_m | {\"width_m\": 3, \"stand\": {}, \"wish\": {\"fill_pct\": 50}}",
        "422 | /stand/distance_m | {\"width_m\": 3, \"stand\": {\"distance_m\": {\"least\": 3, \"usual\": 2, \"most\": 4}}, \"wish\": {\"fill_pct\": 50}}",
        "422 | /models | {\"width_m\": 3, \"stand\": {\"distance_m\": {\"usual\": 2}}, \"models\": [\"core/limit-polyline\"], \"wish\": {\"fill_pct\": 50}}",
        "422 | /room | {\"width_m\": 3, \"stand\": {\"distance_m\": {\"usual\": 2}}, \"wish\": {\"fill_pct\": 50, \"direct_to_reverberant_db\": {\"least\": 0, \"most\": 3}}}",
        "422 | /player_ids/1 | {\"ensemble\": \"boathouse/saltlight-twelve\", \"player_ids\": [\"alto\", \"trumpt\"], \"stand\": {\"distance_m\": {\"usual\": 2}}, \"wish\": {\"fill_pct\": 50}}",
      })
  void aFaultyFitIsToldWithItsPlace(int status, String pointer, String body) {
    post(FIT, body)
        .then()
        .statusCode(status)
        .contentType("application/problem+json")
        .body("errors[0].pointer", equalTo(pointer));
  }

  private static double image(JsonPath answer, int source, String model) {
    return answer.getDouble(
        "sources[%d].images.find { it.model == '%s' }.position_pct".formatted(source, model));
  }

  private static double recordingAngle(JsonPath answer, String model) {
    return answer.getDouble(
        "recording_angles.find { it.model == '%s' }.total_deg".formatted(model));
  }

  private static JsonPath ask(String path, String body) {
    return post(path, body).then().statusCode(200).extract().jsonPath();
  }

  private static Response post(String path, String body) {
    return given().contentType("application/json").body(body).post(path);
  }
}
