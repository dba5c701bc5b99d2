package org.standoff.advice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.advice.Adviser;
import org.standoff.advice.Assessment;
import org.standoff.advice.ClipRisk;
import org.standoff.advice.Cure;
import org.standoff.advice.Cures;
import org.standoff.advice.Limits;
import org.standoff.advice.Question;
import org.standoff.chain.Microphone;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PublishedSources;
import org.standoff.fixture.QuestionBuilder;

/**
 * What studios do by custom (common practice, no single source) follows from levels, purposes and
 * the style: nothing here names what custom does, and no rule may ask which instrument it is.
 */
class CommonPracticeTest {
  /** The default style's surrounding: a diffuse field of so many dB SPL. */
  private static final double NEIGHBOURS_DB_SPL = 85;

  @ParameterizedTest(name = "{0}: {1}, pad {2} dB")
  @CsvSource({
    "kick-inside, cardioid, 10",
    "kick-outside, cardioid, 10",
    "snare-top, cardioid, 10",
    "snare-bottom, cardioid, 10",
    "tom-rack, cardioid, 10",
    "tom-floor, cardioid, 10",
  })
  void closeDrumsGetACardioidAndThePad(String placement, String pattern, double padDb) {
    Assessment chosen = advised(PublishedSources.placement(placement), List.of());
    assertThat(chosen.settings().pattern().name().id()).isEqualTo(pattern);
    assertThat(chosen.settings().pad().padDb()).isEqualTo(padDb);
    assertThat(chosen.levels().clips()).isFalse();
  }

  @Test
  void theDrumsInTheRoomGetAnOmniWithoutPadOrFilter() {
    assertThat(decision("drum-room")).isEqualTo("omni, pad 0, filter 0");
  }

  @Test
  void pianoHammersAreRolledOffOnlyWhileAnotherMicrophoneCarriesTheWeight() {
    Placement hammers = PublishedSources.placement("grand-hammers");
    assertThat(decision(hammers, List.of(Purpose.WEIGHT))).isEqualTo("cardioid, pad 0, filter 40");
    assertThat(decision(hammers, List.of())).isEqualTo("cardioid, pad 0, filter 0");
    assertThat(decision(hammers, List.of(Purpose.ATTACK))).isEqualTo("cardioid, pad 0, filter 0");
  }

  @Test
  void theLowRotorIsTakenFlat() {
    assertThat(decision("rotary-low")).isEqualTo("cardioid, pad 0, filter 0");
  }

  /**
   * Both kicks and the floor tom stay under the wanted 4 dB: about 1.8, 2.7 and 2.1 dB. The floor
   * tom's figure is that of a flat microphone, where the preamp's input is nearest. The chosen 40
   * Hz corner relieves that input, so the electronics are nearest and 0.2 dB more are left: hence
   * the tolerance of 0.25 dB.
   */
  @ParameterizedTest(name = "{0} keeps about {1} dB")
  @CsvSource({"kick-inside, 1.8", "kick-outside, 2.7", "tom-floor, 2.1"})
  void whereEvenThePadLeavesLittleItIsStillChosenAndTheCuresAreTold(
      String placement, double leftDb) {
    Question question = question(PublishedSources.placement(placement), List.of());
    Adviser adviser = new Adviser(question);
    Assessment chosen = best(adviser, testMicrophone());
    double left = chosen.levels().guarded().leastDb();
    assertThat(left).isCloseTo(leftDb, within(0.25)).isLessThan(4);
    assertThat(chosen.settings().pad().padDb()).isEqualTo(10);

    double risk =
        ClipRisk.probability(
            adviser.assessor().arrivals().get(0).peak(), chosen.levels().typical(), 0);
    assertThat(risk).isBetween(0.001, 0.05);

    Limits limits = Limits.of(adviser.assessor(), chosen);
    List<Cure> cures = Cures.of(adviser.assessor(), chosen, limits);
    boolean inShell = placement.equals("kick-inside");
    assertThat(cures)
        .extracting(Cure::cure)
        .contains("another-microphone", "softer")
        .satisfies(
            names -> assertThat(names.contains("farther")).as("farther").isEqualTo(!inShell));
    assertThat(cures.stream().mapToDouble(Cure::missingDb).max().orElseThrow())
        .isCloseTo(4 - left, within(1e-9));
  }

  @Test
  void theFloorTomsFilterRelievesThePreampsInputAndNotTheElectronics() {
    Question question = question(PublishedSources.placement("tom-floor"), List.of());
    Adviser adviser = new Adviser(question);
    Assessment chosen = best(adviser, testMicrophone());
    Assessment flat =
        adviser
            .assessor()
            .assess(
                chosen.microphone(), chosen.view(), chosen.settings().withFilter(Optional.empty()));
    assertThat(filterHz(chosen)).isEqualTo(40);
    assertThat(flat.levels().guarded().leastDb()).isCloseTo(2.14, within(0.05));
    assertThat(flat.levels().guarded().electronicsDb())
        .isEqualTo(chosen.levels().guarded().electronicsDb());
  }

  @Test
  void decisionsDoNotHangOnNames() {
    Map<String, String> before = decisions(UnaryOperator.identity(), testMicrophone());
    Microphone renamed = MicrophoneBuilder.aMultiPattern().called("x/m", "M").build();
    Map<String, String> after =
        decisions(p -> retold(p, "p" + p.title().length(), p.custom()), renamed);
    assertThat(after).isEqualTo(before);
  }

  @Test
  void decisionsDoNotHangOnRecordedCustoms() {
    Map<String, String> before = decisions(UnaryOperator.identity(), testMicrophone());
    assertThat(decisions(p -> retold(p, p.title(), Optional.empty()), testMicrophone()))
        .isEqualTo(before);
    Optional<String> falseCustom = Optional.of("figure-8, 20 dB pad, 150 Hz high-pass");
    assertThat(decisions(p -> retold(p, p.title(), falseCustom), testMicrophone()))
        .isEqualTo(before);
  }

  private static Map<String, String> decisions(
      UnaryOperator<Placement> change, Microphone microphone) {
    Map<String, String> decisions = new LinkedHashMap<>();
    PublishedSources.placements()
        .forEach(
            (id, placement) ->
                decisions.put(id, words(advised(change.apply(placement), List.of(), microphone))));
    assertThat(decisions.values().stream().distinct().count())
        .as("different decisions")
        .isGreaterThan(4);
    return decisions;
  }

  private static Placement retold(Placement p, String name, Optional<String> custom) {
    return new Placement(
        name,
        name,
        p.purpose(),
        p.radiator(),
        p.level(),
        p.spectrum(),
        p.directivity(),
        p.wantedFromHz(),
        p.companion(),
        p.leastDistanceM(),
        p.mostDistanceM(),
        p.side(),
        p.airJet(),
        p.overhead(),
        custom,
        p.basis());
  }

  private static String decision(String placement) {
    return decision(PublishedSources.placement(placement), List.of());
  }

  private static String decision(Placement placement, List<Purpose> companions) {
    return words(advised(placement, companions));
  }

  private static String words(Assessment chosen) {
    return "%s, pad %.0f, filter %.0f"
        .formatted(
            chosen.settings().pattern().name().id(),
            chosen.settings().pad().padDb(),
            filterHz(chosen));
  }

  private static double filterHz(Assessment chosen) {
    return chosen.settings().filter().map(f -> f.highPass().cornerHz()).orElse(0.0);
  }

  private static Assessment advised(Placement placement, List<Purpose> companions) {
    return advised(placement, companions, testMicrophone());
  }

  private static Assessment advised(
      Placement placement, List<Purpose> companions, Microphone microphone) {
    return best(new Adviser(question(placement, companions)), microphone);
  }

  private static Assessment best(Adviser adviser, Microphone microphone) {
    return adviser.advise(List.of(microphone)).ranked().get(0).assessment();
  }

  private static Question question(Placement placement, List<Purpose> companions) {
    return QuestionBuilder.aQuestion(placement)
        .at(placement.level().atM())
        .with(companions.toArray(Purpose[]::new))
        .diffuse(NEIGHBOURS_DB_SPL)
        .build();
  }

  private static Microphone testMicrophone() {
    return MicrophoneBuilder.aMultiPattern().build();
  }
}
