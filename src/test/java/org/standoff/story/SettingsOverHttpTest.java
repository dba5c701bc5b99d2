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
 * Settings for a point that makes 122 dB of peak (119 to 125) and 105 dB of level at 1 m, so that
 * every figure can be reckoned by hand: 6.02 dB more at half the distance, and a microphone of 139
 * dB SPL that takes peaks of 142.01 dB.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class SettingsOverHttpTest {
  private static final double HALF_THE_DISTANCE_DB = 6.0206;

  @Test
  void aToldLevelTakesThePlaceOfTheCatalogues() {
    JsonNode answer =
        asked().with("told_level", Map.of("peak_db_spl", 126, "spread_db", 4, "at_m", 1)).answer();
    JsonNode capsule = answer.at("/at_capsule/0");
    double peak = 126 + HALF_THE_DISTANCE_DB;
    assertThat(capsule.at("/peak_db_spl/low").asDouble()).isCloseTo(peak - 4, within(0.01));
    assertThat(capsule.at("/peak_db_spl/typical").asDouble()).isCloseTo(peak, within(0.01));
    assertThat(capsule.at("/peak_db_spl/high").asDouble()).isCloseTo(peak + 4, within(0.01));
    // the crest of 17 dB between peak and level is the catalogue's
    assertThat(capsule.path("level_db_spl").asDouble()).isCloseTo(peak - 17, within(0.01));
    assertThat(assumptions(answer)).noneMatch(words -> words.contains("level is taken"));
  }

  @Test
  void aToldLevelOfUnknownSpreadIsTakenWiderThanAMeasuredOne() {
    Ask told = asked().with("told_level", Map.of("level_db_spl", 110));
    Ask measured = asked().with("told_level", Map.of("level_db_spl", 110, "measured", true));
    assertThat(spread(told.answer())).isCloseTo(3, within(0.011));
    assertThat(spread(measured.answer())).isCloseTo(1, within(0.011));
    assertThat(told.answer().at("/at_capsule/0/peak_db_spl/typical").asDouble())
        .as("110 dB where the microphone stands, and the catalogue's crest")
        .isCloseTo(127, within(0.01));
    assertThat(assumptions(told.answer()))
        .anyMatch(words -> words.contains("told level is taken as ± 3 dB"))
        .anyMatch(words -> words.contains("17 dB over the long-term level"));
  }

  @Test
  void softerPlayingMovesEveryLevelByTheSourcesOwnStep() {
    double loud = asked().answer().at("/at_capsule/0/peak_db_spl/typical").asDouble();
    double soft =
        asked().with("dynamic", "soft").answer().at("/at_capsule/0/peak_db_spl/typical").asDouble();
    assertThat(loud - soft).isCloseTo(20, within(0.011));
  }

  @Test
  void doublesGetTheGainOfTheLoudestAndAreTold() {
    String flute = Sheets.POINT.replace("title: Point", "title: Softer");
    JsonNode answer =
        asked()
            .with(
                "doubles",
                List.of(
                    Map.of(
                        "source", Sheets.of(flute), "placement", "spot", "level_offset_db", -10)))
            .answer();
    JsonNode oneInput = answer.path("one_input");
    JsonNode shares = oneInput.path("shares");
    assertThat(shares.findValuesAsText("source"))
        .containsExactly("inline/source", "inline/doubles-0-source");
    assertThat(oneInput.path("gain_db").asDouble())
        .isEqualTo(answer.at("/recommendations/0/settings/gain_db").asDouble());
    assertThat(oneInput.path("step_db").asDouble()).isCloseTo(10, within(0.001));
    assertThat(difference(shares, "peak_dbfs")).isCloseTo(10, within(0.011));
    assertThat(difference(shares, "guarded_headroom_db")).isCloseTo(-10, within(0.011));
    assertThat(difference(shares, "own_gain_db")).isCloseTo(-10, within(0.001));
  }

  @Test
  void aPairGetsOneGainAndItsNearerMicrophoneDecides() {
    JsonNode pair = asked().with("second_microphone", Map.of("distance_m", 0.25)).answer();
    JsonNode near = asked().with("distance_m", 0.25).answer();
    assertThat(pair.path("at_capsule")).hasSize(2);
    assertThat(difference(pair.path("at_capsule"), "level_db_spl"))
        .isCloseTo(-HALF_THE_DISTANCE_DB, within(0.011));
    for (String figure : List.of("/settings/gain_db", "/settings/pad_db", "/headroom_db")) {
      assertThat(pair.at("/recommendations/0" + figure))
          .as(figure)
          .isEqualTo(near.at("/recommendations/0" + figure));
    }
  }

  @Test
  void givenSettingsStandSideBySideInTheOrderOfTheQuestion() {
    JsonNode compared =
        asked()
            .with(
                "settings",
                List.of(
                    Map.of("pattern", "cardioid", "pad_db", 10, "gain_db", 20),
                    Map.of("pattern", "omni", "gain_db", 20),
                    Map.of("pattern", "omni", "high_pass_hz", 40)))
            .answer()
            .path("compared");
    assertThat(compared).hasSize(3);
    assertThat(compared.at("/0/settings/pattern").asText()).isEqualTo("cardioid");
    assertThat(compared.at("/0/settings/gain_verdict").asText()).isEqualTo("given");
    assertThat(compared.at("/2/settings/high_pass_hz").asDouble()).isEqualTo(40);
    assertThat(compared.at("/2/settings/gain_verdict").asText()).isEqualTo("within");
    double peak = 122 + HALF_THE_DISTANCE_DB;
    assertThat(headroom(compared.path(1), "electronics")).isCloseTo(142.01 - peak, within(0.011));
    // 14 mV/Pa is -34.86 dBu at 94 dB: 20 dB of gain lead the sine of 125.01 dB to 16.17 dBu
    double sineDbu = 20 * Math.log10(0.014 / Math.sqrt(0.6)) + peak - 3.0103 - 93.9794 + 20;
    assertThat(compared.at("/1/settings/peak_dbfs").asDouble())
        .isCloseTo(sineDbu - 18, within(0.02));
  }

  @Test
  void aPadInTheLeadRelievesThePreampsInputAndNotTheElectronics() {
    Ask near = asked().with("distance_m", 0.2);
    String unpadded =
        Sheets.MULTI_PATTERN
            .replace("pads: [ { pad_db: 10, position: before-electronics } ]\n", "")
            .replace("level_db_spl: 139", "level_db_spl: 150");
    JsonNode without = near.item("microphone", unpadded).best();
    JsonNode with =
        near.item("microphone", unpadded).with("in_line_pads_db", List.of(20, 10)).best();
    assertThat(without.path("verdict").asText()).isEqualTo("thin");
    assertThat(with.path("verdict").asText()).isEqualTo("fits");
    assertThat(with.at("/settings/in_line_pad_db").asDouble()).as("the least").isEqualTo(10);
    assertThat(headroom(with, "electronics")).isEqualTo(headroom(without, "electronics"));
    assertThat(headroom(with, "preamp-input") - headroom(without, "preamp-input"))
        .isCloseTo(10, within(0.011));
  }

  @Test
  void phantomOnTheLineRefusesAPassiveRibbonAndPhantomOffACondenser() {
    Ask both =
        asked()
            .with("microphone", null)
            .with(
                "microphones", List.of(Sheets.of(Sheets.RIBBON), Sheets.of(Sheets.MULTI_PATTERN)));
    JsonNode on = both.with("phantom", "on").answer();
    JsonNode off = both.with("phantom", "off").answer();
    assertThat(on.at("/why_not/0/microphone_id").asText()).isEqualTo("inline/microphones-0");
    assertThat(off.at("/why_not/0/microphone_id").asText()).isEqualTo("inline/microphones-1");
    assertThat(off.at("/recommendations/0/cautions").findValuesAsText("code"))
        .contains("phantom-on-passive-ribbon");
    assertThat(both.answer().path("recommendations")).hasSize(2);
  }

  @Test
  void aRefusalNamesTheFigureThatFails() {
    Object bearsLess = Sheets.of(Sheets.MULTI_PATTERN.replace("139", "125"));
    Object bearsEnough = Sheets.of(Sheets.MULTI_PATTERN);
    JsonNode answer =
        Ask.settings()
            .with("source", "core/kick")
            .with("placement", "inside")
            .with("microphones", List.of(bearsLess, bearsEnough))
            .item("preamp", Sheets.PREAMP)
            .answer();
    JsonNode whyNot = answer.at("/why_not/0");
    assertThat(answer.at("/recommendations/0/microphone").asText())
        .isEqualTo("inline/microphones-1");
    assertThat(answer.path("why_not_count").asInt()).isEqualTo(1);
    assertThat(whyNot.path("microphone_id").asText()).isEqualTo("inline/microphones-0");
    // it bears peaks of 128.01 dB and 10 dB more with its pad; the guarded peak is 148 dB
    assertThat(whyNot.path("found").asDouble()).isCloseTo(-9.99, within(0.011));
    assertThat(whyNot.path("because").asText()).contains("the microphone clips by 10.0 dB", "95th");
  }

  @Test
  void whereTheOnlyMicrophoneClipsItIsToldAsThat() {
    JsonNode best =
        Ask.settings()
            .with("source", "core/kick")
            .with("placement", "inside")
            .item("microphone", Sheets.MULTI_PATTERN.replace("139", "125"))
            .item("preamp", Sheets.PREAMP)
            .best();
    assertThat(best.path("verdict").asText()).isEqualTo("clips");
    assertThat(best.path("first_to_clip").asText()).isEqualTo("electronics");
    assertThat(best.path("headroom_db").asDouble()).isCloseTo(-9.99, within(0.011));
    assertThat(best.path("clip_probability").asDouble()).isGreaterThan(0.8);
  }

  @Test
  void theInverseAgreesWithAskingAgain() {
    Ask kick =
        Ask.settings()
            .with("source", "core/kick")
            .with("placement", "outside")
            .item("microphone", Sheets.MULTI_PATTERN)
            .item("preamp", Sheets.PREAMP);
    JsonNode limits = kick.best().path("limits");
    double nearestM = limits.path("nearest_for_wanted_m").asDouble();
    assertThat(nearestM).isGreaterThan(0.1);
    assertThat(kick.with("distance_m", nearestM + 1e-4).best().path("verdict").asText())
        .isEqualTo("fits");
    assertThat(kick.with("distance_m", nearestM * 0.98).best().path("verdict").asText())
        .isEqualTo("thin");

    double loudestDb = limits.path("loudest_for_wanted_db_spl").asDouble();
    Ask told =
        kick.with("told_level", Map.of("peak_db_spl", loudestDb, "spread_db", 6, "at_m", 0.1));
    assertThat(told.best().path("headroom_db").asDouble()).isCloseTo(4, within(0.02));
  }

  @Test
  void aChangesPriceIsWhatAskingForItGives() {
    Ask question = asked();
    JsonNode best = question.best();
    Map<String, Object> same =
        Map.of(
            "pattern", best.at("/settings/pattern").asText(),
            "high_pass_hz", best.at("/settings/high_pass_hz").asDouble(),
            "pad_db", best.at("/settings/pad_db").asDouble());
    JsonNode farther =
        question
            .with("distance_m", 0.55)
            .with("settings", List.of(same))
            .answer()
            .at("/compared/0");
    JsonNode price = change(best, "distance", "5 cm farther");
    assertThat(farther.path("headroom_db").asDouble() - best.path("headroom_db").asDouble())
        .isCloseTo(price.path("headroom_db").asDouble(), within(0.011));
    assertThat(farther.at("/settings/gain_db").asDouble() - best.at("/settings/gain_db").asDouble())
        .isCloseTo(price.path("gain_db").asDouble(), within(0.011));
  }

  /** Three dB over a peak of ± 3 dB is its 95th percentile; with a sheet's ± 4 dB it takes five. */
  @Test
  void theClipProbabilityCountsPlayerAndSheet() {
    Ask chain =
        Ask.headroom()
            .item("microphone", Sheets.MULTI_PATTERN)
            .item("preamp", Sheets.PREAMP.replace("maximum_input_dbu: 10", "maximum_input_dbu: 40"))
            .with("spread_db", 3);
    JsonNode player = chain.with("peak_db_spl", 139.0103).answer();
    assertThat(probability(player, "electronics")).isCloseTo(0.05, within(2e-4));
    JsonNode sheet =
        chain
            .item("microphone", Sheets.MULTI_PATTERN + "maximum_spl_spread_db: 4\n")
            .with("peak_db_spl", 137.0103)
            .answer();
    assertThat(probability(sheet, "electronics")).isCloseTo(0.05, within(2e-4));
    assertThat(sheet.path("headroom_db").asDouble()).isCloseTo(0, within(0.011));
  }

  @Test
  void theCounterweightBalancesTheMicrophoneOnItsBoom() {
    // moments about the edge of the foot, 0.3 m out: 0.5 kg on 1.2 m and 1 kg on 0.45 m against the
    // stand on 0.3 m and the counterweight on 0.8 m
    assertThat(counterMassKg(2)).isCloseTo((0.5 * 1.2 + 1 * 0.45 - 2 * 0.3) / 0.8, within(1e-3));
    assertThat(counterMassKg(4)).as("it stands without").isZero();
  }

  private static double counterMassKg(double standKg) {
    return asked()
        .item("microphone", Sheets.MULTI_PATTERN + "mass_g: 500\n")
        .with(
            "stand",
            Map.of(
                "boom_m", 1.5,
                "boom_kg", 1,
                "stand_kg", standKg,
                "foot_edge_m", 0.3,
                "counter_arm_m", 0.5))
        .best()
        .path("counter_mass_kg")
        .asDouble();
  }

  private static Ask asked() {
    return Ask.settings()
        .item("source", Sheets.POINT)
        .with("distance_m", 0.5)
        .item("microphone", Sheets.MULTI_PATTERN)
        .item("preamp", Sheets.PREAMP);
  }

  private static double spread(JsonNode answer) {
    JsonNode peak = answer.at("/at_capsule/0/peak_db_spl");
    return (peak.path("high").asDouble() - peak.path("low").asDouble()) / 2;
  }

  private static double difference(JsonNode two, String figure) {
    return two.at("/0/" + figure).asDouble() - two.at("/1/" + figure).asDouble();
  }

  private static double headroom(JsonNode assessed, String stage) {
    return stage(assessed, stage).path("headroom_db").asDouble();
  }

  private static double probability(JsonNode assessed, String stage) {
    return stage(assessed, stage).path("clip_probability").asDouble();
  }

  private static JsonNode stage(JsonNode assessed, String stage) {
    for (JsonNode line : assessed.path("stages")) {
      if (line.path("stage").asText().equals(stage)) {
        return line;
      }
    }
    throw new AssertionError("no stage " + stage + " in " + assessed);
  }

  private static JsonNode change(JsonNode best, String setting, String to) {
    for (JsonNode change : best.path("changes")) {
      if (change.path("setting").asText().equals(setting)
          && change.path("to").asText().equals(to)) {
        return change;
      }
    }
    throw new AssertionError("no change of " + setting + " to " + to);
  }

  private static List<String> assumptions(JsonNode answer) {
    return answer.at("/basis/assumptions").valueStream().map(JsonNode::asText).toList();
  }
}
