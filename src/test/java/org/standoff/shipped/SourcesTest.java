package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Level;

/** Laws over the shipped sources. */
class SourcesTest {
  private static final List<ShippedFile> ALL = ShippedCatalogue.ofKind("source");
  private static final List<ShippedPlacement> PLACEMENTS = ShippedPlacement.all();

  /** Sound power and levels are told to the whole dB, so they may disagree by one. */
  private static final double ROUNDING_DB = 1;

  /** Inside a shell the spread covers the place as well as the player (common practice). */
  private static final double LEAST_SPREAD_IN_SHELL_DB = 6;

  @Test
  void percentilesRiseAndLieSymmetrically() {
    assertThat(PLACEMENTS)
        .as("peak_db_spl: low < typical < high, both ways alike within 1 dB")
        .allMatch(at -> below(at) > 0 && above(at) > 0)
        .allMatch(at -> Math.abs(below(at) - above(at)) <= 1);
  }

  @Test
  void thePeakStandsOverTheLongTermLevel() {
    assertThat(PLACEMENTS)
        .as("a peak is at least a sine's 3.01 dB over the rms level")
        .allMatch(
            at ->
                at.number("/level/peak_db_spl/low") - at.number("/level/long_term_db_spl")
                    > Level.SINE_CREST_DB);
  }

  @Test
  void aShellHasAWideSpread() {
    assertThat(PLACEMENTS.stream().filter(ShippedPlacement::inShell))
        .as("no less than 6 dB each way inside a shell")
        .isNotEmpty()
        .allMatch(at -> above(at) >= LEAST_SPREAD_IN_SHELL_DB);
  }

  @TestFactory
  Stream<DynamicTest> soundPowerFollowsFromTheLongTermLevel() {
    return ALL.stream()
        .filter(source -> source.content().has("sound_power_db"))
        .map(
            source ->
                dynamicTest(
                    source.toString(),
                    () -> {
                      List<Double> each =
                          ShippedPlacement.of(source).stream()
                              .filter(Predicate.not(ShippedPlacement::inShell))
                              .map(ShippedPlacement::soundPowerDb)
                              .toList();
                      double told = source.number("/sound_power_db");
                      assertThat(each).isNotEmpty();
                      assertThat(lookAtTheWhole(each) ? mean(each) : sum(each))
                          .as("correct sound_power_db or long_term_db_spl")
                          .isCloseTo(told, within(ROUNDING_DB));
                    }));
  }

  @Test
  void onlyASourceKnownInsideAShellAloneLacksItsSoundPower() {
    assertThat(ALL)
        .as("add sound_power_db")
        .allMatch(
            source ->
                source.content().has("sound_power_db")
                    || ShippedPlacement.of(source).stream().allMatch(ShippedPlacement::inShell));
  }

  @Test
  void distancesAreARangeThatHoldsTheOneOfTheLevel() {
    assertThat(PLACEMENTS)
        .as("distance_m: least < most, at_m near them")
        .allMatch(at -> at.number("/distance_m/least") < at.number("/distance_m/most"))
        .allMatch(at -> at.number("/level/at_m") >= at.number("/distance_m/least"))
        .allMatch(at -> at.number("/level/at_m") <= at.number("/distance_m/most"));
  }

  @Test
  void nothingIsWantedBelowWhatIsRadiated() {
    assertThat(PLACEMENTS)
        .as("wanted_from_hz is no lower than lowest_hz, which is below highest_hz")
        .allMatch(at -> at.number("/wanted_from_hz") >= at.number("/spectrum/lowest_hz"))
        .allMatch(at -> at.number("/spectrum/lowest_hz") < at.number("/spectrum/highest_hz"));
  }

  @Test
  void aCompanionIsAnotherPlacementOfTheSource() {
    assertThat(PLACEMENTS.stream().filter(at -> at.node().has("companion")))
        .as("companion.purpose names the purpose of another placement, and frees the low end")
        .isNotEmpty()
        .allMatch(at -> others(at).contains(at.text("/companion/purpose")))
        .allMatch(at -> at.number("/companion/wanted_from_hz") > at.number("/wanted_from_hz"));
  }

  @Test
  void theOppositeSideIsOppositeToSomething() {
    assertThat(PLACEMENTS.stream().filter(at -> at.text("/side").equals("opposite")))
        .as("a source with an opposite side has a placement on the reference side")
        .isNotEmpty()
        .allMatch(
            at ->
                ShippedPlacement.of(at.source()).stream()
                    .anyMatch(other -> !other.text("/side").equals("opposite")));
  }

  @Test
  void softerPlayingIsSofter() {
    assertThat(ALL.stream().filter(source -> source.content().has("dynamics_db")))
        .as("dynamics_db: soft < medium < loud = 0")
        .isNotEmpty()
        .allMatch(
            source -> source.number("/dynamics_db/soft") < source.number("/dynamics_db/medium"))
        .allMatch(source -> source.number("/dynamics_db/medium") < 0);
  }

  @Test
  void membersAreInstrumentsAndDoublesAreOthers() {
    Set<String> instruments =
        ALL.stream()
            .filter(source -> source.at("/kind").asText().equals("instrument"))
            .map(ShippedFile::id)
            .collect(Collectors.toSet());
    assertThat(ALL)
        .as("members are instruments; nothing doubles itself")
        .allMatch(
            source ->
                source.each("/members").stream()
                    .allMatch(member -> instruments.contains(member.textValue())))
        .allMatch(
            source ->
                source.each("/doubles").stream()
                    .noneMatch(other -> other.textValue().equals(source.id())));
  }

  /** Placements that look at one whole agree about its power; those that look at parts don't. */
  private static boolean lookAtTheWhole(List<Double> powersDb) {
    double most = powersDb.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double least = powersDb.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    return most - least <= ROUNDING_DB;
  }

  private static double mean(List<Double> powersDb) {
    return powersDb.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double sum(List<Double> powersDb) {
    return Level.energySum(powersDb.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static List<String> others(ShippedPlacement at) {
    return ShippedPlacement.of(at.source()).stream()
        .filter(other -> !other.name().equals(at.name()))
        .map(other -> other.text("/purpose"))
        .toList();
  }

  private static double below(ShippedPlacement at) {
    return at.number("/level/peak_db_spl/typical") - at.number("/level/peak_db_spl/low");
  }

  private static double above(ShippedPlacement at) {
    return at.number("/level/peak_db_spl/high") - at.number("/level/peak_db_spl/typical");
  }
}
