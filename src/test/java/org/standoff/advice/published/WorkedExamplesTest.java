package org.standoff.advice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.LateField;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.Reverberation;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.SpectrumClass;
import org.standoff.advice.Adviser;
import org.standoff.advice.Assessment;
import org.standoff.advice.Question;
import org.standoff.chain.Microphone;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PlacementBuilder;
import org.standoff.fixture.PreampBuilder;
import org.standoff.fixture.QuestionBuilder;

/** Topic W: worked examples that need sources and rooms; sources stand in each row. */
class WorkedExamplesTest {
  private static final Radiator POINT = new Radiator.Point(0);

  /** The bell of a trumpet, radius in m. */
  private static final Radiator BELL = new Radiator.Piston(0.062);

  @TestFactory
  Stream<DynamicTest> workedExamples() {
    String chain = "worked through the chain beside the chain";
    return CheckTable.ofTopics("W-worked")
        .notHere("W01", chain)
        .notHere("W02", chain)
        .notHere("W03", chain)
        .notHere("W04", chain)
        .notHere("W05", chain)
        .notHere("W06", chain)
        .row("W07", () -> peakDb(trumpet(POINT, 0.1)))
        .row("W08", () -> electronicsDb(trumpet(POINT, 0.1)))
        .row("W09", () -> peakDb(trumpet(POINT, 0.4)))
        .row("W10", () -> electronicsDb(trumpet(POINT, 0.4)))
        .row("W11", () -> samples(21))
        .row("W12", () -> samples(12))
        .row("W13", () -> Reverberation.criticalDistanceM(70, 1))
        .row("W14", WorkedExamplesTest::lateDb)
        .row("W15", WorkedExamplesTest::violinDb)
        .row(
            "W16",
            () -> violinDb() - lateDb() + PatternName.SUPERCARDIOID.ideal().directivityIndexDb())
        .row("W17", () -> 121 + new Radiator.Piston(0.178).levelChangeDb(1, 0.05))
        .tests();
  }

  /** Figures of the worked session: 135 dB SPL at 0.5 %, pads of 10 and 20 dB; derived. */
  @Test
  void aTrumpetsOutburstClipsTheElectronicsAtTenCentimetresByTheBellsLawToo() {
    assertThat(electronicsDb(trumpet(BELL, 0.1))).isCloseTo(-3.3, within(0.05));
    assertThat(electronicsDb(trumpet(BELL, 0.4))).isGreaterThan(7);
  }

  @Test
  void atTenCentimetresTheOutburstGetsThePadAndAtFortyNone() {
    Microphone microphone = ofTheSession().padBefore(10).padBefore(20).build();
    for (Radiator radiator : List.of(POINT, BELL)) {
      assertThat(advised(radiator, 0.1, microphone).settings().pad().padDb()).isEqualTo(10);
      assertThat(advised(radiator, 0.4, microphone).settings().pad().padDb()).isZero();
    }
  }

  private static MicrophoneBuilder ofTheSession() {
    return MicrophoneBuilder.aMicrophone().pattern(PatternName.OMNI, 5, 10).bears(135);
  }

  private static Assessment trumpet(Radiator radiator, double distanceM) {
    return advised(radiator, distanceM, ofTheSession().build());
  }

  private static Assessment advised(Radiator radiator, double distanceM, Microphone microphone) {
    Placement trumpet =
        PlacementBuilder.aPlacement()
            .radiating(radiator)
            .peak(1, 122, 0, 105)
            .spectrum(SpectrumClass.BRASS, 164.8, 14_000)
            .build();
    Question question =
        QuestionBuilder.aQuestion(trumpet)
            .at(distanceM)
            .into(PreampBuilder.aPreamp().maximumInput(24).build())
            .build();
    return new Adviser(question).advise(List.of(microphone)).ranked().get(0).assessment();
  }

  private static double peakDb(Assessment assessment) {
    return assessment.levels().loudest().peak().db();
  }

  private static double electronicsDb(Assessment assessment) {
    return assessment.levels().typical().electronicsDb();
  }

  private static double samples(double temperatureC) {
    return 1.08 / Air.at(temperatureC).speedOfSoundMPerS() * 48_000;
  }

  private static double lateDb() {
    return LateField.levelDb(108, 70, 474, 0);
  }

  private static double violinDb() {
    return new SoundPower(89).freeField(new Radiator.Sphere(0.14).effectiveDistanceM(0.05), 1).db();
  }
}
