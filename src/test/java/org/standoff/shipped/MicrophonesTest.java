package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.RmsSpl;
import org.standoff.chain.Address;
import org.standoff.chain.PadPosition;
import org.standoff.chain.Powering;
import org.standoff.chain.ThermalNoise;
import org.standoff.chain.Transducer;
import org.standoff.chain.Volts;

/** Laws over the shipped microphones: what no microphone can be. */
class MicrophonesTest {
  private static final List<ShippedFile> ALL = ShippedCatalogue.ofKind("microphone");

  /** IEC 61938, P48: a supply need not give more (from memory). */
  private static final double MOST_PHANTOM_MA = 10;

  /** More than a sheet rounds when it states both figures. */
  private static final double SIGNAL_TO_NOISE_SLACK_DB = 1;

  /** One pattern of one output, with the microphone it belongs to. */
  private record Pattern(ShippedFile microphone, JsonNode figures) {
    double number(String name) {
      return figures.get(name).doubleValue();
    }

    boolean has(String name) {
      return figures.has(name);
    }

    @Override
    public String toString() {
      return microphone + ", " + figures.get("pattern").textValue();
    }
  }

  @Test
  void coreHasAMicrophoneOfEveryKindThatTheWordsAllow() {
    assertThat(wordsInCore(file -> Stream.of(file.at("/transducer"))))
        .containsAll(ids(Transducer.values(), Transducer::id));
    assertThat(wordsInCore(file -> Stream.of(file.at("/address"))))
        .containsAll(ids(Address.values(), Address::id));
    assertThat(wordsInCore(file -> patternsOf(file).map(at -> at.figures().get("pattern"))))
        .containsAll(ids(PatternName.values(), PatternName::id));
    assertThat(wordsInCore(file -> file.each("/pads").stream().map(pad -> pad.get("position"))))
        .containsAll(ids(PadPosition.values(), PadPosition::id));
    assertThat(wordsInCore(file -> Stream.of(file.at("/powering/need"))))
        .containsAll(ids(Powering.Need.values(), Powering.Need::id));
  }

  @Test
  void theMaximumStandsAboveTheSelfNoise() {
    assertThat(patterns().filter(pattern -> pattern.has("self_noise_dba")))
        .as("exchange or correct maximum_spl and self_noise_dba")
        .allMatch(
            pattern ->
                pattern.microphone().number("/maximum_spl/level_db_spl")
                    > pattern.number("self_noise_dba"));
  }

  @Test
  void onlyAMicrophoneWithElectronicsHasSelfNoise() {
    assertThat(patterns())
        .as("give a condenser or active ribbon its self_noise_dba; take it from a passive one")
        .allMatch(
            pattern -> pattern.has("self_noise_dba") != transducer(pattern.microphone()).passive());
  }

  @Test
  void selfNoiseIsNotBelowThatOfTheOutputImpedance() {
    assertThat(patterns().filter(pattern -> pattern.has("self_noise_dba")))
        .as("a lower self-noise than the thermal noise of source_impedance_ohm: correct either")
        .allMatch(
            pattern ->
                Volts.outputDbu(
                        pattern.number("sensitivity_mv_per_pa"),
                        new RmsSpl(pattern.number("self_noise_dba")))
                    > ThermalNoise.dbu(pattern.microphone().number("/source_impedance_ohm"))
                        + AWeighting.whiteNoiseDb());
  }

  @Test
  void aStatedSignalToNoiseRatioIsTheOneOfTheSelfNoise() {
    List<Pattern> told =
        patterns().filter(at -> at.microphone().content().has("signal_to_noise_db")).toList();
    assertThat(told).isNotEmpty();
    assertThat(told.stream().map(Pattern::microphone).distinct())
        .as("signal_to_noise_db is 94 - self_noise_dba of one of the patterns: correct either")
        .allMatch(
            file ->
                patternsOf(file).anyMatch(at -> contradictionDb(at) <= SIGNAL_TO_NOISE_SLACK_DB));
  }

  @Test
  void aCapsuleBearsNoLessThanTheMicrophone() {
    assertThat(ALL.stream().filter(file -> file.content().has("capsule_limit_db_spl")))
        .as("raise capsule_limit_db_spl, or lower the maximum")
        .isNotEmpty()
        .allMatch(
            file ->
                file.number("/capsule_limit_db_spl") >= file.number("/maximum_spl/level_db_spl"));
  }

  @Test
  void padsAttenuateAndDiffer() {
    assertThat(ALL)
        .as("pad_db is above 0, each pad another")
        .allMatch(
            file ->
                file.each("/pads").stream().allMatch(pad -> pad.get("pad_db").doubleValue() > 0))
        .allMatch(
            file -> distinct(file.each("/pads").stream().map(pad -> pad.get("pad_db")).toList()));
  }

  @Test
  void aPhantomLineCanFeedEveryMicrophone() {
    assertThat(ALL.stream().filter(file -> file.at("/powering/need").asText().equals("p48")))
        .as("current_ma is at most 10")
        .isNotEmpty()
        .allMatch(file -> file.number("/powering/current_ma") <= MOST_PHANTOM_MA);
  }

  @Test
  void whatHasElectronicsIsPowered() {
    assertThat(ALL)
        .as("powering.need is p48 with electronics, none or none-and-never without")
        .allMatch(
            file -> file.at("/powering/need").asText().equals("p48") != transducer(file).passive());
  }

  @Test
  void aBodyHasOneMainOutputOrMidAndSide() {
    assertThat(ALL)
        .as("call a single output main, two outputs mid and side")
        .allMatch(
            file -> Set.of(List.of("main"), List.of("mid", "side")).contains(outputIds(file)));
    assertThat(ALL.stream().filter(file -> outputIds(file).contains("side")))
        .as("a side output is a figure-8 and nothing else")
        .isNotEmpty()
        .allMatch(file -> file.at("/outputs/1/patterns/0/pattern").asText().equals("figure-8"))
        .allMatch(file -> file.at("/outputs/1/patterns").size() == 1);
  }

  @Test
  void noPatternStandsTwiceOnASwitch() {
    assertThat(ALL)
        .as("one row of figures a pattern")
        .allMatch(
            file ->
                file.each("/outputs").stream()
                    .allMatch(
                        output ->
                            distinct(
                                output
                                    .get("patterns")
                                    .valueStream()
                                    .map(pattern -> pattern.get("pattern"))
                                    .toList())));
  }

  @Test
  void aCoefficientFitsItsWord() {
    assertThat(patterns().filter(pattern -> pattern.has("omni_part")))
        .as("omni_part is nearer to another pattern's: correct it, or the word")
        .isNotEmpty()
        .allMatch(
            pattern ->
                nearest(pattern.number("omni_part"))
                    .equals(pattern.figures().get("pattern").textValue()));
  }

  @Test
  void anEstimatedMaximumIsMarkedOrHasADistortionFigure() {
    assertThat(ALL.stream().filter(file -> transducer(file) == Transducer.MOVING_COIL))
        .as("state thd_percent, or say basis_of: { maximum_spl: assumed }")
        .allMatch(
            file ->
                file.at("/maximum_spl").has("thd_percent")
                    || file.at("/basis_of/maximum_spl").asText().equals("assumed"));
  }

  @Test
  void noTwoMicrophonesAreTheSame() {
    Function<ShippedFile, JsonNode> outputs = file -> file.at("/outputs");
    assertThat(ALL.stream().filter(file -> file.pack().equals("core")).map(outputs).toList())
        .as("two generic microphones with equal figures teach nothing: drop one")
        .doesNotHaveDuplicates();
  }

  private static double contradictionDb(Pattern pattern) {
    double stated = pattern.microphone().number("/signal_to_noise_db");
    return Math.abs(RmsSpl.ONE_PASCAL_DB - pattern.number("self_noise_dba") - stated);
  }

  private static String nearest(double omniPart) {
    return Arrays.stream(PatternName.values())
        .filter(Predicate.not(PatternName.HALF_OMNI::equals))
        .min(
            (one, other) ->
                Double.compare(
                    Math.abs(one.ideal().omniPart() - omniPart),
                    Math.abs(other.ideal().omniPart() - omniPart)))
        .orElseThrow()
        .id();
  }

  private static Transducer transducer(ShippedFile file) {
    return Transducer.ofId(file.at("/transducer").textValue()).orElseThrow();
  }

  private static List<String> outputIds(ShippedFile file) {
    return file.each("/outputs").stream().map(output -> output.get("id").textValue()).toList();
  }

  private static Set<String> wordsInCore(Function<ShippedFile, Stream<JsonNode>> words) {
    return ALL.stream()
        .filter(file -> file.pack().equals("core"))
        .flatMap(words)
        .map(JsonNode::textValue)
        .collect(Collectors.toSet());
  }

  private static <T> List<String> ids(T[] values, Function<T, String> id) {
    return Arrays.stream(values).map(id).toList();
  }

  private static boolean distinct(List<?> values) {
    return Set.copyOf(values).size() == values.size();
  }

  private static Stream<Pattern> patterns() {
    return ALL.stream().flatMap(MicrophonesTest::patternsOf);
  }

  private static Stream<Pattern> patternsOf(ShippedFile file) {
    return file.each("/outputs").stream()
        .flatMap(output -> output.get("patterns").valueStream())
        .map(figures -> new Pattern(file, figures));
  }
}
