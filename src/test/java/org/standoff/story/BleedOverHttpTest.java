package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;

/**
 * What else a cardioid hears, reckoned again by hand: distance law, pattern, energy sum, late
 * field. The wanted source stands at half a metre and makes 111.02 dB there.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class BleedOverHttpTest {
  private static final double WANTED_DB = 105 + 20 * Math.log10(1 / 0.5);

  /** Random-energy efficiency of a cardioid is a third (a first-order pattern of half and half). */
  private static final double CARDIOID_INDEX_DB = 10 * Math.log10(3);

  private static final double TOLERANCE_DB = 0.011;

  @Test
  void directSoundFallsByDistanceAndPattern() {
    JsonNode hears = hears(asked().with("neighbours", List.of(powerless(2, 120))));
    // a cardioid at 120° hears 0.5 + 0.5 cos 120° = 0.25
    double directDb = 105 - 20 * Math.log10(2) + 20 * Math.log10(0.25);
    JsonNode line = hears.at("/neighbours/0");
    assertThat(line.path("direct_db_spl").asDouble()).isCloseTo(directDb, within(TOLERANCE_DB));
    assertThat(line.has("late_db_spl")).as("no power, no late field").isFalse();
    assertThat(line.path("re_wanted_db").asDouble())
        .isCloseTo(directDb - WANTED_DB, within(TOLERANCE_DB));
    assertThat(hears.path("unwanted_db_spl").asDouble()).isCloseTo(directDb, within(TOLERANCE_DB));
  }

  @Test
  void noRejectionDeeperThanTheCapIsBelieved() {
    JsonNode hears = hears(asked().with("neighbours", List.of(powerless(2, 180))));
    assertThat(hears.at("/neighbours/0/direct_db_spl").asDouble())
        .isCloseTo(105 - 20 * Math.log10(2) - 20, within(TOLERANCE_DB));
  }

  @Test
  void neighboursAndADiffuseLevelAddAsEnergy() {
    JsonNode hears =
        hears(
            asked()
                .with("neighbours", List.of(powerless(2, 90), powerless(4, 60)))
                .with("neighbour_level_db_spl", 95));
    double first = 105 - 20 * Math.log10(2) + 20 * Math.log10(0.5);
    double second = 105 - 20 * Math.log10(4) + 20 * Math.log10(0.75);
    double diffuse = 95 - CARDIOID_INDEX_DB;
    assertThat(hears.path("unwanted_db_spl").asDouble())
        .isCloseTo(energySum(first, second, diffuse), within(TOLERANCE_DB));
    assertThat(hears.path("unwanted_re_wanted_db").asDouble())
        .isCloseTo(energySum(first, second, diffuse) - WANTED_DB, within(TOLERANCE_DB));
  }

  @Test
  void aRoomAddsTheLateFieldOfEverySource() {
    JsonNode hears = hears(asked().with("neighbours", List.of(neighbour(Sheets.POINT, 2, 90))));
    double direct = 105 - 20 * Math.log10(2) + 20 * Math.log10(0.5);
    double late = lateDb(116);
    JsonNode line = hears.at("/neighbours/0");
    assertThat(line.path("late_db_spl").asDouble()).isCloseTo(late, within(TOLERANCE_DB));
    assertThat(line.path("re_wanted_db").asDouble())
        .isCloseTo(energySum(direct, late) - WANTED_DB, within(TOLERANCE_DB));
    assertThat(hears.path("direct_to_reverberant_db").asDouble())
        .isCloseTo(WANTED_DB - lateDb(116), within(TOLERANCE_DB));
  }

  @Test
  void aToldLevelMovesTheSoundPowerWithIt() {
    double before = hears(asked()).path("direct_to_reverberant_db").asDouble();
    JsonNode louder =
        cardioid(asked().with("told_level", Map.of("peak_db_spl", 132, "spread_db", 3, "at_m", 1)));
    assertThat(louder.at("/hears/direct_to_reverberant_db").asDouble())
        .isCloseTo(before, within(TOLERANCE_DB));
    JsonNode farther =
        cardioid(asked().with("told_level", Map.of("peak_db_spl", 132, "spread_db", 3, "at_m", 2)));
    assertThat(farther.at("/hears/direct_to_reverberant_db").asDouble())
        .as("the same source, told where it is 6 dB softer")
        .isCloseTo(before, within(TOLERANCE_DB));
  }

  @Test
  void theRoomsNoiseComesThroughThePattern() {
    JsonNode noise = cardioid(asked()).path("noise");
    assertThat(noise.path("room_dba").asDouble())
        .isCloseTo(28 - CARDIOID_INDEX_DB, within(TOLERANCE_DB));
    assertThat(cardioid(asked().with("background_noise_dba", 40)).at("/noise/room_dba").asDouble())
        .isCloseTo(40 - CARDIOID_INDEX_DB, within(TOLERANCE_DB));
  }

  @Test
  void whereNothingIsToldTheStylesSurroundingStandsInAloud() {
    Ask bare =
        Ask.settings()
            .item("source", Sheets.POINT)
            .item("microphone", Sheets.MULTI_PATTERN)
            .item("preamp", Sheets.PREAMP);
    JsonNode answer = bare.answer();
    assertThat(answer.at("/asked/neighbour_level_db_spl").asDouble()).isEqualTo(85);
    assertThat(answer.at("/basis/assumptions").toString())
        .contains("core/studio-medium", "diffuse 85 dB SPL", "the distance is taken as 1.00 m");
  }

  private static Ask asked() {
    return Ask.settings()
        .item("source", Sheets.POINT)
        .with("distance_m", 0.5)
        .item("microphone", Sheets.MULTI_PATTERN)
        .item("preamp", Sheets.PREAMP)
        .item("room", Sheets.HALL)
        .with("settings", List.of(Map.of("pattern", "cardioid")));
  }

  private static JsonNode cardioid(Ask asked) {
    return asked.answer().at("/compared/0");
  }

  private static JsonNode hears(Ask asked) {
    return cardioid(asked).path("hears");
  }

  private static Map<String, Object> powerless(double distanceM, double angleDeg) {
    return neighbour(Sheets.POINT.replace("sound_power_db: 116\n", ""), distanceM, angleDeg);
  }

  private static Map<String, Object> neighbour(String source, double distanceM, double angleDeg) {
    return Map.of("source", Sheets.of(source), "distance_m", distanceM, "angle_deg", angleDeg);
  }

  /** 4 (1 − ᾱ) / A of the hall, through a cardioid. */
  private static double lateDb(double powerDb) {
    return powerDb + 10 * Math.log10(4 * (1 - 70.0 / 474) / 70) - CARDIOID_INDEX_DB;
  }

  private static double energySum(double... levelsDb) {
    double energy = 0;
    for (double level : levelsDb) {
      energy += Math.pow(10, level / 10);
    }
    return 10 * Math.log10(energy);
  }
}
