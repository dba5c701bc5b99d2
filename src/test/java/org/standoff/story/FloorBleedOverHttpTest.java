package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.StandingFloor.VIOLIN_SPOT;
import static org.standoff.fixture.StandingFloor.cell;
import static org.standoff.fixture.StandingFloor.microphone;
import static org.standoff.fixture.StandingFloor.place;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;
import org.standoff.fixture.StandingFloor;

/**
 * Bleed over HTTP against figures reckoned by hand: the demo's check figures, for sources that are
 * points alike to all sides, only the direct sound explicit, A = 70 m² and S = 474 m².
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class FloorBleedOverHttpTest {
  /** The figures are told to 0.1 dB. */
  private static final double TOLD_DB = 0.055;

  /** The hand counts no air, which takes something of the highest octaves on the way. */
  private static final double WITH_AIR_DB = 0.2;

  @Test
  void theDemosFiguresByHand() {
    JsonNode answer = bleed(byHand(Sheets.of(Sheets.HALL)), 0).answer();
    JsonNode trumpet = cell(answer, "violin", "trumpet");
    JsonNode drums = cell(answer, "violin", "drums");
    assertThat(trumpet.path("path_m").asDouble()).isCloseTo(3.39, within(0.0051));
    assertThat(trumpet.path("direct_db_spl").asDouble()).isCloseTo(79.4, within(WITH_AIR_DB));
    assertThat(trumpet.path("late_db_spl").asDouble()).isCloseTo(87.9, within(TOLD_DB));
    assertThat(drums.path("path_m").asDouble()).isCloseTo(6.03, within(0.0051));
    assertThat(drums.path("direct_db_spl").asDouble()).isCloseTo(81.4, within(WITH_AIR_DB));
    assertThat(drums.path("late_db_spl").asDouble()).isCloseTo(94.9, within(TOLD_DB));
    assertThat(drums.has("reflections_db_spl")).as("none are computed").isFalse();
  }

  @Test
  void theHallsOwnAbsorptionMovesTheLateFieldALittle() {
    JsonNode answer = bleed(byHand("boathouse/hall"), 0).answer();
    assertThat(cell(answer, "violin", "trumpet").path("late_db_spl").asDouble())
        .isCloseTo(87.9, within(0.6));
    assertThat(cell(answer, "violin", "drums").path("late_db_spl").asDouble())
        .isCloseTo(94.9, within(0.6));
  }

  @Test
  void asDescribedTheTrumpetPointsAtTheViolinsMicrophone() {
    JsonNode points = bleed(byHand("boathouse/hall"), 0).answer();
    JsonNode described =
        bleed(
                StandingFloor.demo("boathouse/hall", "violin", "trumpet", "drums")
                    .pattern("violin", "omni", VIOLIN_SPOT, "violin"),
                0)
            .answer();
    JsonNode trumpet = cell(described, "violin", "trumpet");
    assertThat(trumpet.path("source_angle_deg").asDouble()).isLessThan(20);
    double more =
        trumpet.path("direct_db_spl").asDouble()
            - cell(points, "violin", "trumpet").path("direct_db_spl").asDouble();
    assertThat(more).as("its bell's directivity").isBetween(3.0, 11.0);
    assertThat(trumpet.path("late_db_spl").asDouble())
        .as("power is power")
        .isEqualTo(cell(points, "violin", "trumpet").path("late_db_spl").asDouble());
  }

  @Test
  void noAimAndNoGoboTakesTheDrumsOutOfTheViolin() {
    JsonNode violin = microphone(spot("boathouse/hall").answer(), "violin");
    assertThat(violin.path("isolation_db").asDouble()).isNegative();
    assertThat(violin.path("room_dominates").asBoolean()).isTrue();
    assertThat(violin.at("/offenders/0/source").asText()).isEqualTo("drums");
    assertThat(violin.path("because").asText()).contains("through the room");
    assertThat(kinds(violin)).doesNotContain("re-aim", "barrier").contains("closer", "lining");
    assertThat(remedy(violin, "lining").path("gain_db").asDouble())
        .as("at most what 60 m² take off the late field")
        .isBetween(0.5, 2.6);
    double strongest = violin.at("/remedies/0/gain_db").asDouble();
    violin
        .path("remedies")
        .forEach(one -> assertThat(one.path("gain_db").asDouble()).isLessThanOrEqualTo(strongest));
  }

  @Test
  void whereTheRoomIsDeadAimAndGoboHelpAndDrapesDoNot() {
    JsonNode violin = microphone(spot(deadHall()).answer(), "violin");
    assertThat(violin.path("room_dominates").asBoolean()).isFalse();
    assertThat(kinds(violin)).doesNotContain("lining").contains("barrier");
    assertThat(violin.path("because").asText()).contains("an aim or a barrier can help");
  }

  @Test
  void brushesAreWorthFourteenDecibels() {
    StandingFloor sticks = byHand("boathouse/hall");
    StandingFloor brushes =
        sticks.with("playing", List.of(Map.of("player", "drums", "variant", "brushes")));
    assertThat(total(sticks, "drums") - total(brushes, "drums")).isCloseTo(14, within(0.011));
    assertThat(total(brushes, "trumpet")).isEqualTo(total(sticks, "trumpet"));
  }

  @Test
  void aToldLevelMovesTheWholeSource() {
    StandingFloor usual = byHand("boathouse/hall");
    StandingFloor told =
        usual.with(
            "playing",
            List.of(
                Map.of(
                    "player",
                    "drums",
                    "told_level",
                    Map.of("level_db_spl", 100, "at_m", 1, "measured", true))));
    // the kit's file tells 104 dB at 1 m loud, the ensemble plays 7 dB less
    assertThat(total(told, "drums") - total(usual, "drums")).isCloseTo(3, within(0.011));
  }

  @Test
  void aMirroredFloorHasAMirroredMatrix() {
    StandingFloor floor =
        StandingFloor.in("boathouse/hall")
            .with(
                "sources",
                List.of(
                    source("trumpet", place(11.6, 5.2, 1.5), 80),
                    source("violin", place(8.6, 3.9, 1.5), 45)))
            .pattern("spot", "supercardioid", VIOLIN_SPOT, "violin");
    StandingFloor mirrored =
        StandingFloor.in("boathouse/hall")
            .with(
                "sources",
                List.of(
                    source("trumpet", place(14 - 11.6, 5.2, 1.5), -80),
                    source("violin", place(14 - 8.6, 3.9, 1.5), -45)))
            .pattern("spot", "supercardioid", place(14 - 8.4, 4.2, 2.0), "violin");
    JsonNode one = bleed(floor, 2).answer();
    JsonNode other = bleed(mirrored, 2).answer();
    assertThat(other.at("/microphones/0/heard")).isEqualTo(one.at("/microphones/0/heard"));
  }

  @Test
  void aGoboTakesFromTheDirectSoundAlone() {
    StandingFloor open = byHand("boathouse/hall");
    JsonNode free = cell(bleed(open, 0).answer(), "violin", "drums");
    JsonNode behind =
        cell(
            bleed(open.barrier("boathouse/gobo", 3.4, 4.45, 90), 0).with("octaves", true).answer(),
            "violin",
            "drums");
    assertThat(behind.path("direct_db_spl").asDouble())
        .isLessThan(free.path("direct_db_spl").asDouble() - 2);
    // its own absorption is all that it takes from the late field
    assertThat(behind.path("late_db_spl").asDouble())
        .isCloseTo(free.path("late_db_spl").asDouble(), within(0.5))
        .isLessThan(free.path("late_db_spl").asDouble());
    behind
        .at("/octaves/barrier_db")
        .forEach(loss -> assertThat(loss.asDouble()).isLessThanOrEqualTo(0));
  }

  @Test
  void theOctavesAddUpToTheCell() {
    JsonNode cell =
        cell(bleed(byHand("boathouse/hall"), 1).with("octaves", true).answer(), "violin", "drums");
    double energy = 0;
    for (JsonNode octave : cell.at("/octaves/total_db_spl")) {
      energy += octave.isNull() ? 0 : Math.pow(10, octave.asDouble() / 10);
    }
    assertThat(10 * Math.log10(energy))
        .isCloseTo(cell.path("total_db_spl").asDouble(), within(0.02));
    for (String band : List.of("125", "1k", "8k")) {
      JsonNode octaves = cell.path("octaves");
      double parts =
          octaves.at("/sound_power_db/" + band).asDouble()
              + octaves.path("spreading_db").asDouble()
              + octaves.at("/source_directivity_db/" + band).asDouble()
              + octaves.at("/pattern_db/" + band).asDouble()
              + octaves.at("/air_db/" + band).asDouble()
              + octaves.at("/barrier_db/" + band).asDouble();
      assertThat(octaves.at("/direct_db_spl/" + band).asDouble()).isCloseTo(parts, within(0.05));
    }
  }

  @Test
  void twoMicrophonesThatShareASourceComb() {
    StandingFloor floor =
        StandingFloor.in(deadHall())
            .point("point", place(5, 5, 1.5))
            .pattern("near", "omni", place(5.5, 5, 1.5), "point")
            .pattern("far", "omni", place(6, 5, 1.5), "point");
    JsonNode shared = bleed(floor, 0).answer().at("/shared_sources/0");
    assertThat(shared.path("first").asText()).isEqualTo("near");
    assertThat(shared.path("level_difference_db").asDouble()).isCloseTo(6.02, within(0.05));
    // two equal-sign copies half as strong: 20 lg(1.5/0.5)
    assertThat(shared.path("ripple_db").asDouble()).isCloseTo(9.54, within(0.08));
    double delayS = 0.5 / bleed(floor, 0).answer().at("/basis/speed_of_sound_m_per_s").asDouble();
    assertThat(shared.path("first_notch_hz").asDouble()).isCloseTo(0.5 / delayS, within(0.2));
  }

  @Test
  void aRemedyKeepsItsPromise() {
    JsonNode violin = microphone(spot("boathouse/hall").answer(), "violin");
    JsonNode closer = remedy(violin, "closer");
    JsonNode there = closer.path("microphone");
    StandingFloor moved =
        StandingFloor.demo("boathouse/hall", "violin", "trumpet", "drums")
            .microphone(
                Map.of(
                    "id",
                    "violin",
                    "microphone",
                    "boathouse/sdc-card-1",
                    "position_m",
                    there.path("position_m"),
                    "azimuth_deg",
                    there.path("azimuth_deg"),
                    "elevation_deg",
                    there.path("elevation_deg"),
                    "wanted",
                    List.of("violin")));
    assertThat(microphone(bleed(moved, 1).answer(), "violin").path("isolation_db").asDouble())
        .isCloseTo(closer.path("isolation_db").asDouble(), within(0.03));
  }

  @Test
  void theAnswerSaysWhatItRestsOn() {
    JsonNode answer = spot("boathouse/hall").answer();
    assertThat(answer.at("/basis/validity").toString())
        .contains("equivalent-box", "below-schroeder");
    assertThat(answer.at("/basis/assumptions").toString())
        .contains("drum-kit radiates as at its placement 'overhead'", "looks at violin");
    assertThat(answer.at("/basis/unknowns").toString()).contains("± 6 dB");
    assertThat(answer.path("octave_paths").asLong()).isEqualTo(3 * 7 * 10);
    assertThat(answer.at("/microphones/0/isolation_spread_db").asDouble())
        .isCloseTo(6 * Math.sqrt(2), within(0.01));
  }

  private static StandingFloor byHand(Object room) {
    return StandingFloor.demo(room, "violin", "trumpet", "drums")
        .with("radiation", "omnidirectional-points")
        .pattern("violin", "omni", VIOLIN_SPOT, "violin");
  }

  private static Ask spot(Object room) {
    return bleed(
            StandingFloor.demo(room, "violin", "trumpet", "drums")
                .microphone(
                    Map.of(
                        "id",
                        "violin",
                        "microphone",
                        "boathouse/sdc-card-1",
                        "position_m",
                        VIOLIN_SPOT,
                        "wanted",
                        List.of("violin"))),
            1)
        .with("remedies", Map.of("barrier", "boathouse/gobo", "material_area_m2", 60));
  }

  private static JsonNode deadHall() {
    return Sheets.of(Sheets.HALL.replace("70", "470"));
  }

  private static Map<String, Object> source(String id, Map<String, Double> at, double facingDeg) {
    return Map.of(
        "id", id, "source", "core/" + id, "position_m", at, "facing_azimuth_deg", facingDeg);
  }

  private static Ask bleed(StandingFloor floor, int order) {
    return Ask.floor("bleed").with("floor", floor.node()).with("order", order);
  }

  private static double total(StandingFloor floor, String source) {
    return cell(bleed(floor, 1).answer(), "violin", source).path("total_db_spl").asDouble();
  }

  private static List<String> kinds(JsonNode microphone) {
    List<String> kinds = new ArrayList<>();
    microphone.path("remedies").forEach(one -> kinds.add(one.path("kind").asText()));
    return kinds;
  }

  private static JsonNode remedy(JsonNode microphone, String kind) {
    for (JsonNode one : microphone.path("remedies")) {
      if (one.path("kind").asText().equals(kind)) {
        return one;
      }
    }
    throw new AssertionError("no remedy " + kind + " in " + microphone.path("remedies"));
  }
}
