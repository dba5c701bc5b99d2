package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.StandingFloor.VIOLIN_SPOT;
import static org.standoff.fixture.StandingFloor.microphone;
import static org.standoff.fixture.StandingFloor.place;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;
import org.standoff.fixture.StandingFloor;

/** Alignment, aim, room and exposure over HTTP, against sums by hand. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class FloorAnswersOverHttpTest {
  private static final String BATCH = "application/x-ndjson";
  private static final String ROOM = "/v1/floor/room?room=boathouse/hall";

  @Test
  void theBoathouseIsAsItWasDescribed() {
    JsonNode answer = Ask.tree(given().get(ROOM).asString());
    assertThat(answer.path("schroeder_hz").asDouble()).isCloseTo(96, within(0.5));
    assertThat(answer.at("/critical_distances/0/pattern").asText()).isEqualTo("omni");
    assertThat(answer.at("/critical_distances/0/mid_m").asDouble()).isCloseTo(1.18, within(0.0055));
    double[] told = {1.5, 1.6, 1.5, 1.5, 1.3, 1.15};
    for (int i = 0; i < told.length; i++) {
      assertThat(answer.at("/decays/" + (i + 2) + "/sabine_s").asDouble())
          .as(answer.at("/decays/" + (i + 2) + "/octave").asText())
          .isCloseTo(told[i], within(0.05));
    }
    assertThat(answer.at("/basis/unknowns")).isNotEmpty();
  }

  @Test
  void sixtySquareMetresOfDrapeBuyTwoDecibels() {
    JsonNode drape =
        Ask.tree(given().get(ROOM + "&material_area_m2=60").asString()).at("/linings/0");
    assertThat(drape.path("late_change_db").asDouble()).isCloseTo(-2.3, within(0.055));
    assertThat(drape.path("decay_s").asDouble()).isCloseTo(0.97, within(0.0055));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "text/csv", "text/plain"})
  void aRoomIsAnsweredInEveryForm(String form) {
    Response answer = given().accept(form).get(ROOM);
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.contentType()).startsWith(form);
    assertThat(answer.header("ETag")).isEqualTo(given().accept(form).get(ROOM).header("ETag"));
  }

  @Test
  void aRoomAskedByBodyIsTheRoomAskedByQuery() {
    String byBody =
        Ask.floor("room")
            .with("room", "boathouse/hall")
            .with("material", "core/drape-heavy")
            .with("material_area_m2", List.of(60, 30))
            .send()
            .asString();
    assertThat(byBody)
        .isEqualTo(
            given()
                .get(ROOM + "&material=core/drape-heavy&material_area_m2=60&material_area_m2=30")
                .asString());
  }

  @Test
  void arrivalsAreThePathsOverTheSpeedOfSound() {
    JsonNode answer =
        Ask.floor("alignment").with("floor", line().node()).with("source", "point").answer();
    double speed = answer.at("/basis/speed_of_sound_m_per_s").asDouble();
    assertThat(answer.at("/arrivals/0/microphone").asText()).isEqualTo("near");
    JsonNode far = answer.at("/arrivals/1");
    assertThat(far.path("arrival_ms").asDouble()).isCloseTo(4000 / speed, within(0.001));
    assertThat(far.path("after_first_ms").asDouble()).isCloseTo(3500 / speed, within(0.001));
    assertThat(far.path("after_first_samples").asDouble())
        .isCloseTo(48 * 3500 / speed, within(0.01));
    assertThat(far.at("/comb_with_first/first_notch_hz").asDouble())
        .isCloseTo(speed / 7, within(0.1));
    assertThat(answer.path("strategies")).isEmpty();
  }

  @Test
  void aWarmAfternoonShortensEveryArrival() {
    JsonNode answer =
        Ask.floor("alignment")
            .with("floor", line().node())
            .with("source", "point")
            .with("coldest_c", 12)
            .with("warmest_c", 21)
            .with("sample_rate_hz", 96000)
            .answer();
    // 4 m at 338.5 m/s and at 343.8 m/s
    assertThat(answer.at("/arrivals/1/drift_samples").asDouble())
        .isCloseTo(96000 * 4 * (1 / 338.5 - 1 / 343.8), within(0.3));
  }

  @Test
  void delaysToThePairAreToldSideBySideAndPathsMadeEqual() {
    StandingFloor floor =
        StandingFloor.in(Sheets.of(Sheets.HALL))
            .point("point", place(5, 5, 1))
            .pattern("close", "cardioid", place(5.1, 5, 1), "point")
            .pattern("left", "cardioid", place(4, 5, 2), "point")
            .pattern("right", "cardioid", place(6.3, 5, 2.1), "point");
    Ask asked =
        Ask.floor("alignment")
            .with("source", "point")
            .with("pair", List.of("left", "right"))
            .with("extra_ms", 8);
    JsonNode answer = asked.with("floor", floor.node()).answer();
    List<String> strategies = new ArrayList<>();
    answer.path("strategies").forEach(one -> strategies.add(one.path("strategy").asText()));
    assertThat(strategies).containsExactly("none", "to-pair", "to-pair-plus");
    assertThat(answer.at("/strategies/1/microphones/0/after_pair_ms").asDouble())
        .isCloseTo(0, within(0.0002));
    assertThat(answer.at("/strategies/2/microphones/0/after_pair_ms").asDouble())
        .isCloseTo(8, within(0.0002));
    JsonNode equal = answer.at("/equal_path/right_equal_m");
    StandingFloor moved =
        StandingFloor.in(Sheets.of(Sheets.HALL))
            .point("point", place(5, 5, 1))
            .pattern("close", "cardioid", place(5.1, 5, 1), "point")
            .pattern("left", "cardioid", place(4, 5, 2), "point")
            .pattern(
                "right",
                "cardioid",
                place(
                    equal.path("x").asDouble(),
                    equal.path("y").asDouble(),
                    equal.path("z").asDouble()),
                "point");
    assertThat(asked.with("floor", moved.node()).answer().at("/equal_path/lead_samples").asDouble())
        .isCloseTo(0, within(0.02));
  }

  @Test
  void theUnderSideOfADrumAsksForTheOtherPolarity() {
    StandingFloor floor =
        StandingFloor.in(Sheets.of(Sheets.HALL))
            .point("point", place(5, 5, 1))
            .pattern("top", "cardioid", place(5, 5, 1.05), "point")
            .microphone(
                Map.of(
                    "id",
                    "under",
                    "pattern",
                    "cardioid",
                    "position_m",
                    place(5, 5, 0.9),
                    "wanted",
                    List.of("point"),
                    "side",
                    "opposite"));
    JsonNode under =
        Ask.floor("alignment")
            .with("floor", floor.node())
            .with("source", "point")
            .answer()
            .at("/arrivals/1");
    assertThat(under.at("/polarity/invert_by_side").asBoolean()).isTrue();
    assertThat(under.at("/polarity/invert_by_low_sum").asBoolean()).isTrue();
  }

  @Test
  void aNullOnTheOnlyNeighbourIsFoundAndKeepsItsPromise() {
    StandingFloor floor =
        StandingFloor.in(Sheets.of(Sheets.HALL.replace("70", "470")))
            .point("wanted", place(5, 5, 1.5))
            .point("neighbour", place(7, 5, 1.5))
            .pattern("spot", "figure-8", place(5, 5.5, 1.5), "wanted");
    JsonNode spot =
        microphone(
            Ask.floor("aim")
                .with("floor", floor.node())
                .with("order", 0)
                .with("limits", Map.of("wanted_loss_db", 1))
                .answer(),
            "spot");
    assertThat(spot.path("pointless").asBoolean()).isFalse();
    assertThat(spot.path("gain_db").asDouble()).isGreaterThan(3);
    assertThat(
            spot.at("/today/wanted_db_spl").asDouble() - spot.at("/best/wanted_db_spl").asDouble())
        .isLessThanOrEqualTo(1.01);
    assertThat(spot.at("/best/azimuth_deg").asDouble()).isBetween(-180.0, 180.0);
    StandingFloor turned =
        floor.with(
            "microphones",
            List.of(
                Map.of(
                    "id",
                    "spot",
                    "pattern",
                    "figure-8",
                    "position_m",
                    place(5, 5.5, 1.5),
                    "wanted",
                    List.of("wanted"),
                    "azimuth_deg",
                    spot.at("/best/azimuth_deg"),
                    "elevation_deg",
                    spot.at("/best/elevation_deg"))));
    JsonNode then =
        microphone(
            Ask.floor("bleed").with("floor", turned.node()).with("order", 0).answer(), "spot");
    assertThat(then.path("unwanted_db_spl").asDouble())
        .isCloseTo(spot.at("/best/unwanted_db_spl").asDouble(), within(0.05));
  }

  @Test
  void inTheBoathouseNoAimIsWorthTheWalk() {
    JsonNode violin =
        microphone(
            Ask.floor("aim")
                .with(
                    "floor",
                    StandingFloor.demo("boathouse/hall", "violin", "trumpet", "drums")
                        .pattern("violin", "cardioid", VIOLIN_SPOT, "violin")
                        .node())
                .answer(),
            "violin");
    assertThat(violin.path("pointless").asBoolean()).isTrue();
    assertThat(violin.path("because").asText()).contains("the room");
  }

  @Test
  void aPatternIsSwitchedOnlyWhereItMayBe() {
    StandingFloor floor =
        StandingFloor.in(Sheets.of(Sheets.HALL))
            .point("wanted", place(5, 5, 1.5))
            .point("neighbour", place(7, 5, 1.5))
            .microphone(
                Map.of(
                    "id",
                    "spot",
                    "microphone",
                    Sheets.of(Sheets.MULTI_PATTERN),
                    "pattern",
                    "omni",
                    "position_m",
                    place(5, 5.5, 1.5),
                    "wanted",
                    List.of("wanted")));
    Ask asked = Ask.floor("aim").with("floor", floor.node());
    assertThat(asked.answer().at("/microphones/0/best/pattern").asText()).isEqualTo("omni");
    assertThat(
            asked
                .with("limits", Map.of("switch_pattern", true))
                .answer()
                .at("/microphones/0/best/pattern")
                .asText())
        .isNotEqualTo("omni");
  }

  @Test
  void aDayIsDosedByEachRuleForItself() {
    JsonNode answer =
        Ask.floor("exposure")
            .with("floor", StandingFloor.demo("boathouse/hall", "drums", "violin").node())
            .with("seats", List.of(Map.of("id", "cellist", "position_m", place(9.8, 2.4, 1.3))))
            .with(
                "day",
                List.of(
                    Map.of("title", "sticks", "hours", 2),
                    Map.of("title", "brushes", "hours", 1, "louder_db", Map.of("drums", -14)),
                    Map.of("title", "violin alone", "hours", 0.5, "sounding", List.of("violin"))))
            .answer();
    JsonNode seat = answer.at("/seats/0");
    double niosh = 0;
    double osha = 0;
    double energy = 0;
    for (JsonNode part : seat.path("parts")) {
      double level = part.at("/level_dba/typical").asDouble();
      double hours = part.path("hours").asDouble();
      niosh += 100 * hours / (8 / Math.pow(2, (level - 85) / 3));
      osha += 100 * hours / (8 / Math.pow(2, (level - 90) / 5));
      energy += hours / 8 * Math.pow(10, level / 10);
    }
    assertThat(dose(seat, "niosh-rel")).isCloseTo(niosh, within(niosh * 0.005));
    assertThat(dose(seat, "osha-pel")).isCloseTo(osha, within(osha * 0.005));
    assertThat(seat.at("/daily_exposure_dba/typical").asDouble())
        .isCloseTo(10 * Math.log10(energy), within(0.011));
    assertThat(seat.at("/daily_exposure_dba/high").asDouble())
        .isCloseTo(seat.at("/daily_exposure_dba/typical").asDouble() + 6, within(0.011));
    assertThat(answer.at("/cautions").toString())
        .contains("local regulations")
        .doesNotContain("safe");
  }

  @ParameterizedTest
  @CsvSource({
    "bleed, text/csv",
    "bleed, text/plain",
    "bleed, image/svg+xml",
    "alignment, text/csv",
    "alignment, text/plain",
    "aim, text/csv",
    "aim, text/plain"
  })
  void everyFormIsAnsweredAlikeTwice(String noun, String form) {
    Ask asked = Ask.floor(noun).with("floor", line().node());
    Ask whole = noun.equals("alignment") ? asked.with("source", "point") : asked;
    Response first = whole.send(form);
    assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
    assertThat(first.contentType()).startsWith(form);
    assertThat(whole.send(form).asByteArray()).isEqualTo(first.asByteArray());
  }

  @Test
  void aBatchAnswersLineByLine() {
    String one = Ask.floor("bleed").with("floor", line().node()).body().toString();
    String answers =
        given()
            .config(
                RestAssuredConfig.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig().encodeContentTypeAs(BATCH, ContentType.TEXT)))
            .contentType(BATCH)
            .accept(BATCH)
            .body(one + "\n{\"floor\": {}}\n")
            .post("/v1/floor/bleed")
            .asString();
    List<String> lines = answers.lines().toList();
    assertThat(lines).hasSize(2);
    assertThat(Ask.tree(lines.get(0)).at("/answer/microphones")).hasSize(2);
    assertThat(Ask.tree(lines.get(1)).at("/problem/status").asInt()).isEqualTo(422);
  }

  private static double dose(JsonNode seat, String rule) {
    for (JsonNode dose : seat.path("doses")) {
      if (dose.path("rule").asText().equals(rule)) {
        return dose.path("typical_percent").asDouble();
      }
    }
    throw new AssertionError("no dose by " + rule);
  }

  private static StandingFloor line() {
    return StandingFloor.in(Sheets.of(Sheets.HALL))
        .point("point", place(5, 5, 1.5))
        .pattern("near", "omni", place(5.5, 5, 1.5), "point")
        .pattern("far", "omni", place(9, 5, 1.5), "point");
  }
}
