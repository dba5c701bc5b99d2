package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Level;

/**
 * The session's players come out as loud as its description says: offsets on the core sources, and
 * the radiator's law from the level's distance to 1 m. Derived; the description tells whole dB.
 */
class SaltlightTwelveTest {
  private static final double TOLD_TO_DB = 1;
  private static final ShippedFile TWELVE =
      ShippedCatalogue.find("ensemble", "boathouse/saltlight-twelve");

  @ParameterizedTest(name = "{0} {1} {2}: L_W {3} dB, peak at 1 m {4} dB")
  @CsvSource({
    "drums,      drum-kit,         '',      108, 117",
    "drums,      drum-kit,         brushes,  94, 103",
    "percussion, congas,           '',      101, 118",
    "bass,       double-bass-jazz, '',       92, 102",
    "marimba,    marimba,          '',       95, 108",
    "guitar,     guitar-amp,       '',       96, 103",
    "harp,       harp,             '',       85,  98",
    "violin,     violin,           '',       89,  99",
    "cello,      cello,            '',       90,  98",
    "trumpet,    trumpet,          '',      101, 112",
    "trumpet,    trumpet,          fff,     111, 122",
    "alto,       saxophone,        '',       97, 108",
    "alto,       flute,            '',       91,  98",
    "trombone,   trombone,         '',      101, 117",
    "voice,      voice-sung-close, '',       93, 108",
  })
  void aPlayerIsAsLoudAsTold(
      String player, String source, String variant, double powerDb, double peakDb) {
    ShippedFile played = ShippedCatalogue.find("source", "core/" + source);
    double offsetDb = offsetDb(player, "core/" + source, variant);
    assertThat(played.number("/sound_power_db") + offsetDb).isCloseTo(powerDb, within(TOLD_TO_DB));
    assertThat(ShippedPlacement.of(played).get(0).peakDb(1) + offsetDb)
        .isCloseTo(peakDb, within(TOLD_TO_DB));
  }

  @Test
  void elevenPlayersInTheHallMakeAboutAHundredAndElevenDecibels() {
    double[] inTheHall =
        players().stream()
            .filter(player -> !player.get("id").asText().equals("voice"))
            .map(player -> player.at("/sources/0"))
            .mapToDouble(
                part ->
                    ShippedCatalogue.find("source", part.get("source").textValue())
                            .number("/sound_power_db")
                        + part.get("level_offset_db").doubleValue())
            .toArray();
    assertThat(inTheHall).hasSize(11);
    assertThat(Level.energySum(inTheHall)).isCloseTo(110.7, within(0.1));
  }

  @Test
  void everyPlayerStandsInsideTheHall() {
    ShippedFile hall = ShippedCatalogue.find("room", TWELVE.at("/room").textValue());
    assertThat(players())
        .as("position_m is measured from the south-west floor corner")
        .allMatch(
            player ->
                inside(player.at("/position_m/x").doubleValue(), hall.number("/box/length_m")))
        .allMatch(
            player -> inside(player.at("/position_m/y").doubleValue(), hall.number("/box/width_m")))
        .allMatch(
            player ->
                inside(player.at("/position_m/z").doubleValue(), hall.number("/box/height_m")));
  }

  @Test
  void playersAreTwelveAndEachHasAName() {
    assertThat(players()).hasSize(12);
    assertThat(players().stream().map(player -> player.get("id").textValue()))
        .doesNotHaveDuplicates();
  }

  private static boolean inside(double at, double size) {
    return at > 0 && at < size;
  }

  private static double offsetDb(String player, String source, String variant) {
    JsonNode part =
        players().stream()
            .filter(one -> one.get("id").textValue().equals(player))
            .flatMap(one -> one.get("sources").valueStream())
            .filter(one -> one.get("source").textValue().equals(source))
            .findFirst()
            .orElseThrow();
    return variant.isEmpty()
        ? part.get("level_offset_db").doubleValue()
        : part.at("/variants_db/" + variant).doubleValue();
  }

  private static List<JsonNode> players() {
    return TWELVE.each("/players");
  }
}
