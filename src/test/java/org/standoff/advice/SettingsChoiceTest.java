package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.MicrophoneBuilder.aCardioid;
import static org.standoff.fixture.MicrophoneBuilder.aMicrophone;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.PreampBuilder.aPreamp;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.HighPass;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Radiator;
import org.standoff.chain.Filter;
import org.standoff.chain.FilterPlace;
import org.standoff.chain.Gain;
import org.standoff.chain.GainVerdict;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.PadPosition;
import org.standoff.chain.Preamp;
import org.standoff.chain.Reading;
import org.standoff.chain.Settings;

class SettingsChoiceTest {
  private static final Pad TEN = new Pad(10, PadPosition.BEFORE_ELECTRONICS);

  /** −10 lg(1 + (40/f)^4) is 1.0 dB at 56.1 Hz: 40 Hz is allowed there and not below. */
  @ParameterizedTest(name = "wanted from {0} Hz: {1} Hz")
  @CsvSource({"55, 0", "57, 40", "125, 40", "127, 90", "1000, 90"})
  void theHighestCornerWithinTheAllowedLossIsChosen(double wantedFromHz, double cornerHz) {
    Microphone microphone = aCardioid(14, 12).highPass(40, 2).highPass(90, 2).build();
    Question question = aQuestion(aPlacement().wantedFrom(wantedFromHz).build()).build();
    assertThat(cornerHz(FilterChoice.choose(microphone, question))).isEqualTo(cornerHz);
  }

  @Test
  void aLossOfExactlyTheAllowedOneIsAllowed() {
    Microphone microphone = aCardioid(14, 12).highPass(100, 2).build();
    double atCornerDb = -new HighPass(100, 2).gainDb(100);
    assertThat(FilterChoice.choose(microphone, aQuestion().allowingFilterLoss(atCornerDb).build()))
        .isPresent();
    assertThat(
            FilterChoice.choose(
                microphone, aQuestion().allowingFilterLoss(atCornerDb - 1e-9).build()))
        .isEmpty();
  }

  @Test
  void ofEqualCornersTheMicrophonesComesBeforeThePreampsAndAHigherOneWins() {
    Microphone microphone = aCardioid(14, 12).highPass(80, 2).build();
    Question equal =
        aQuestion(aPlacement().wantedFrom(200).build())
            .into(aPreamp().highPass(80, 3).build())
            .build();
    Question higher =
        aQuestion(aPlacement().wantedFrom(200).build())
            .into(aPreamp().highPass(100, 3).build())
            .build();
    assertThat(FilterChoice.choose(microphone, equal))
        .contains(new Filter(new HighPass(80, 2), FilterPlace.AFTER_FIRST_STAGE));
    assertThat(FilterChoice.choose(microphone, higher))
        .contains(new Filter(new HighPass(100, 3), FilterPlace.PREAMP));
  }

  @Test
  void theProximityRiseIsNotSetAgainstTheFiltersLoss() {
    Microphone microphone = aCardioid(14, 12).highPass(90, 2).build();
    Question near = aQuestion(aPlacement().wantedFrom(90).build()).at(0.05).build();
    assertThat(new Assessor(near).views(microphone).get(0).riseAtLowestDb()).isGreaterThan(10);
    assertThat(FilterChoice.choose(microphone, near)).isEmpty();
  }

  @Test
  void padsAreTriedFromTheSmallestAttenuationTheMicrophonesOwnFirst() {
    Microphone microphone = aCardioid(14, 12).padBefore(20).padBefore(10).build();
    Question question = aQuestion().inLinePads(20.0).into(aPreamp().pad(10).build()).build();
    assertThat(PadChoice.combinations(question, microphone, flat(microphone)))
        .extracting(
            s -> "%.0f+%.0f+%.0f".formatted(s.pad().padDb(), s.preampPadDb(), s.inLinePadDb()))
        .containsExactly(
            "0+0+0",
            "10+0+0",
            "0+10+0",
            "20+0+0",
            "10+10+0",
            "0+0+20",
            "20+10+0",
            "10+0+20",
            "0+10+20",
            "20+0+20",
            "10+10+20",
            "20+10+20");
  }

  /** Peaks of 120 + 6 dB against 139 + 3.01 dB leave 16.01 dB, with the pad 26.01 dB. */
  @ParameterizedTest(name = "{0} dB wanted: pad {1} dB")
  @CsvSource({"4, 0", "16, 0", "17, 10", "26, 10", "27, 10"})
  void theSmallestPadThatLeavesTheWantedHeadroomIsChosenElseTheOneThatLeavesMost(
      double wantedDb, double padDb) {
    Microphone microphone = aMicrophone().pattern(PatternName.OMNI, 0.1, 12).padBefore(10).build();
    Question question = aQuestion().wantingHeadroom(wantedDb).into(easy()).build();
    assertThat(choose(question, microphone).settings().pad().padDb()).isEqualTo(padDb);
  }

  @Test
  void whereThePreampsInputIsTheLimitAPadInTheLeadIsTaken() {
    Microphone hot = aMicrophone().pattern(PatternName.OMNI, 100, 12).build();
    Question question = aQuestion().inLinePads(20.0).build();
    Settings settings = choose(question, hot).settings();
    assertThat(settings.inLinePadDb()).isEqualTo(20);
    assertThat(choose(aQuestion().build(), hot).settings().totalPadDb()).isZero();
  }

  @Test
  void thePadDoesNotDecideThePattern() {
    Microphone microphone =
        aMicrophone()
            .pattern(PatternName.OMNI, 2, 12)
            .pattern(PatternName.CARDIOID, 2, 12)
            .bears(130)
            .padBefore(10)
            .build();
    Question near =
        aQuestion(aPlacement().peak(0.1, 120, 6, 100).wantedFrom(200).build())
            .at(0.1)
            .wantingHeadroom(7)
            .diffuse(85)
            .build();
    Settings settings = choose(near, microphone).settings();
    assertThat(settings.pattern().name()).isEqualTo(PatternName.CARDIOID);
    assertThat(settings.pad()).isEqualTo(TEN);
  }

  @Test
  void aPairGetsOneGainThatOfTheLouderMicrophoneAndItIsNotCalledTold() {
    Microphone microphone = aMicrophone().pattern(PatternName.OMNI, 14, 12).build();
    Assessment pair = choose(aQuestion().at(1).at(0.5).build(), microphone);
    Assessment nearer = choose(aQuestion().at(0.5).build(), microphone);
    Gain one = nearer.levels().loudest().gain();
    assertThat(one.verdict()).isEqualTo(GainVerdict.WITHIN);
    assertThat(pair.levels().readings()).extracting(Reading::gain).containsExactly(one, one);
    assertThat(pair.levels().loudest().peak().db()).isCloseTo(126.02, within(0.01));
    assertThat(pair.levels().guarded()).isEqualTo(nearer.levels().guarded());
  }

  @Test
  void aPairThatIsTooLoudForThePreampSaysSo() {
    Microphone microphone = aMicrophone().pattern(PatternName.OMNI, 14, 12).build();
    Question loud = aQuestion(aPlacement().peak(1, 140, 0, 120).build()).at(1).at(1.2).build();
    assertThat(choose(loud, microphone).levels().loudest().gain().verdict())
        .isEqualTo(GainVerdict.BELOW_RANGE);
  }

  @Test
  void behindASourceThatRadiatesForwardEveryFigureStaysANumber() {
    Question behind =
        aQuestion(aPlacement().directivity(new Directivity(12, 12, 12, 12)).build())
            .at(new Position(1, 0, 180, 0))
            .build();
    Assessment chosen = choose(behind, aCardioid(14, 12).build());
    assertThat(chosen.levels().guarded().leastDb()).isFinite();
    assertThat(chosen.signalToNoiseDb()).isFinite();
    assertThat(chosen.levels().loudest().peak().db()).isCloseTo(120 - 60, within(0.01));
  }

  @Test
  void anUnsureDistanceWidensThePeaksSpreadInPower() {
    Arrival sure = arrival(new Position(0.5, 0, 0, 0));
    Arrival unsure = arrival(new Position(0.5, 0.1, 0, 0));
    double halfRangeDb = 20 * Math.log10(0.6 / 0.4) / 2;
    assertThat(unsure.peak().spreadDb()).isCloseTo(Math.hypot(6, halfRangeDb), within(1e-9));
    assertThat(unsure.peak().typicalDb()).isEqualTo(sure.peak().typicalDb());
  }

  @Test
  void insideAShellTheLevelDoesNotChangeWithThePlace() {
    Question near =
        aQuestion(aPlacement().radiating(new Radiator.Shell(0.28)).peak(0.1, 142, 6, 116).build())
            .at(0.05)
            .build();
    assertThat(new Assessor(near).arrivals().get(0).peak().typicalDb()).isEqualTo(142);
  }

  private static Arrival arrival(Position position) {
    return new Assessor(aQuestion().at(position).build()).arrivals().get(0);
  }

  private static double cornerHz(Optional<Filter> filter) {
    return filter.map(f -> f.highPass().cornerHz()).orElse(0.0);
  }

  private static Preamp easy() {
    return aPreamp().maximumInput(60).maximumOutput(60).fullScale(60).build();
  }

  private static Settings flat(Microphone microphone) {
    return new Settings(
        "main", microphone.outputs().get(0).patterns().get(0), Optional.empty(), Pad.OUT, 0, 0);
  }

  private static Assessment choose(Question question, Microphone microphone) {
    return SettingsChoice.choose(new Assessor(question), microphone);
  }
}
