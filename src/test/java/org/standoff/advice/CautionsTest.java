package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.standoff.fixture.MicrophoneBuilder.aCardioid;
import static org.standoff.fixture.MicrophoneBuilder.aMicrophone;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.PreampBuilder.aPreamp;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.AirJet;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Placement;
import org.standoff.chain.Microphone;
import org.standoff.chain.Powering;
import org.standoff.chain.Transducer;

class CautionsTest {
  private static final Microphone RIBBON =
      aMicrophone()
          .called("t/ribbon")
          .of(Transducer.PASSIVE_RIBBON)
          .powered(Powering.Need.NONE_AND_NEVER, OptionalDouble.empty())
          .passivePattern(PatternName.FIGURE_8, 1.5)
          .build();

  /** Row N16 (common practice): warn of a passive ribbon wherever phantom may come to its line. */
  @ParameterizedTest
  @CsvSource({"ON", "OFF", "FREE"})
  void aPassiveRibbonOnAPreampWithPhantomIsWarnedOf(LinePhantom line) {
    assertThat(Cautions.ofMicrophone(aQuestion().phantom(line).build(), RIBBON))
        .extracting(Caution::code, Caution::severity, Caution::appliesTo)
        .containsExactly(tuple("phantom-on-passive-ribbon", "high", "t/ribbon"));
  }

  @Test
  void phantomThatIsSwitchedForSeveralInputsIsTold() {
    Question banks = aQuestion().into(aPreamp().phantomBanksOf(4).build()).build();
    Question single = aQuestion().into(aPreamp().phantomBanksOf(1).build()).build();
    Microphone condenser = aCardioid(14, 12).build();
    List<Caution> cautions = Cautions.ofMicrophone(banks, condenser);
    assertThat(cautions).extracting(Caution::code).containsExactly("phantom-bank");
    assertThat(cautions.get(0).why()).contains("4 inputs");
    assertThat(Cautions.ofMicrophone(single, condenser)).isEmpty();
  }

  @ParameterizedTest(name = "a {0} jet of air: {1}")
  @CsvSource({"NONE, false", "LIGHT, true", "STRONG, true"})
  void movingAirIsTheRibbonsDanger(AirJet jet, boolean warned) {
    Question question = aQuestion(aPlacement().airJet(jet).build()).build();
    assertThat(codes(Cautions.ofMicrophone(question, RIBBON)).contains("air-jet"))
        .isEqualTo(warned);
    assertThat(codes(Cautions.ofMicrophone(question, aCardioid(14, 12).build())))
        .doesNotContain("air-jet");
  }

  @Test
  void aMicrophoneAbovePeopleCarriesTheCaution() {
    assertThat(codes(ofPlace(aPlacement().peak(1, 80, 3, 60).overhead().build())))
        .containsExactly("overhead-stand");
    assertThat(ofPlace(aPlacement().peak(1, 80, 3, 60).build())).isEmpty();
  }

  /**
   * 112 Pa (134.96 dB) is the lower action value for peaks of Directive 2003/10/EC, 85 dB(A)
   * NIOSH's.
   */
  @ParameterizedTest(name = "peaks up to {0} dB, {1} dB long-term: {2}")
  @CsvSource({
    "128.9, 80, ",
    "129, 80, high",
    "100, 84, ",
    "100, 90, medium",
    "140, 120, high",
  })
  void anEarAtTheMicrophonesPlaceIsWarnedByPublishedLimits(
      double typicalPeakDb, double longTermDb, String severity) {
    List<Caution> cautions = ofPlace(aPlacement().peak(1, typicalPeakDb, 6, longTermDb).build());
    if (severity == null) {
      assertThat(cautions).isEmpty();
    } else {
      assertThat(cautions)
          .extracting(Caution::code, Caution::severity)
          .containsExactly(tuple("hearing-at-the-source", severity));
    }
  }

  @Test
  void noCautionCallsAnythingSafe() {
    Placement loud = aPlacement().peak(1, 140, 6, 120).overhead().airJet(AirJet.LIGHT).build();
    Question question = aQuestion(loud).into(aPreamp().phantomBanksOf(4).build()).build();
    List<Caution> all = new ArrayList<>(ofPlace(loud));
    all.addAll(Cautions.ofMicrophone(question, RIBBON));
    all.addAll(Cautions.ofMicrophone(question, aCardioid(14, 12).build()));
    assertThat(all).hasSize(5);
    assertThat(all)
        .allSatisfy(
            caution -> {
              assertThat(caution.toString()).doesNotContainIgnoringCase("compliant");
              assertThat(caution.toString()).doesNotContain("is safe", "safe to");
              assertThat(caution.deferTo()).isNotBlank();
            });
  }

  private static List<Caution> ofPlace(Placement placement) {
    Question question = aQuestion(placement).build();
    return Cautions.ofPlace(question, new Assessor(question).arrivals().get(0));
  }

  private static List<String> codes(List<Caution> cautions) {
    return cautions.stream().map(Caution::code).toList();
  }
}
