package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.MicrophoneBuilder.aCardioid;
import static org.standoff.fixture.MicrophoneBuilder.aMicrophone;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.PreampBuilder.aPreamp;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Proximity;
import org.standoff.acoustics.Purpose;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;

class PreferencesTest {
  /** What a cardioid hears less of a diffuse field than an omni, 10 lg 3 dB. */
  private static final double CARDIOID_DB = 10 * Math.log10(3);

  @Test
  void anOmniHasNoIsolation() {
    Question question = aQuestion().diffuse(85).build();
    assertThat(IsolationPreference.points(view(question, omni()), question))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void aCardioidsRandomEnergyRejectionCountsForItOrWhereTheRoomIsWantedAgainstIt() {
    Question body = aQuestion(aPlacement().purpose(Purpose.BODY).build()).diffuse(85).build();
    Question room = aQuestion(aPlacement().purpose(Purpose.ROOM).build()).diffuse(85).build();
    assertThat(IsolationPreference.points(view(body, cardioid()), body))
        .isCloseTo(CARDIOID_DB, within(1e-9));
    assertThat(IsolationPreference.points(view(room, cardioid()), room))
        .isCloseTo(-CARDIOID_DB, within(1e-9));
  }

  @Test
  void withNothingAroundTheRandomEnergyRejectionStandsIn() {
    Question question = aQuestion().build();
    assertThat(view(question, cardioid()).isolationDb()).isCloseTo(CARDIOID_DB, within(1e-9));
  }

  @Test
  void evennessCostsTheStylesWeightPerDbOfRiseAtTheLowestWantedNote() {
    Placement placement = aPlacement().wantedFrom(80).build();
    Question question = aQuestion(placement).at(0.2).evenness(0.5).build();
    double riseDb =
        Proximity.riseDb(
            PatternName.CARDIOID.ideal(), 1, 0.2, 80, Air.STANDARD.speedOfSoundMPerS());
    assertThat(riseDb).isGreaterThan(5);
    assertThat(EvennessPreference.points(view(question, cardioid()), question))
        .isCloseTo(-0.5 * riseDb, within(1e-9));
    assertThat(EvennessPreference.points(view(question, omni()), question)).isZero();
  }

  @Test
  void headroomCostsAPointADbThatIsMissingAndNothingWhereNoneIs() {
    // 139 + 3.01 dB against 120 + 6 dB: 16 dB are left
    Question modest = aQuestion().wantingHeadroom(4).into(easy()).build();
    Question greedy = aQuestion().wantingHeadroom(20).into(easy()).build();
    double left = assess(modest, omni()).levels().guarded().leastDb();
    assertThat(left).isCloseTo(16.01, within(0.01));
    assertThat(HeadroomPreference.points(assess(modest, omni()), modest)).isZero();
    assertThat(HeadroomPreference.points(assess(greedy, omni()), greedy))
        .isCloseTo(-3.99, within(0.01));
  }

  @Test
  void noiseCostsAPointADbThatItComesTooNear() {
    Question easygoing = aQuestion().noiseDistance(50).build();
    Question strict = aQuestion().noiseDistance(95).build();
    Assessment quiet = assess(easygoing, aCardioid(14, 12).build());
    assertThat(quiet.signalToNoiseDb()).isBetween(80.0, 90.0);
    assertThat(QuietPreference.points(quiet, easygoing)).isZero();
    assertThat(QuietPreference.points(assess(strict, aCardioid(14, 12).build()), strict))
        .isCloseTo(quiet.signalToNoiseDb() - 95, within(1e-9));
  }

  @Test
  void inANoisyRoomAQuietMicrophoneWinsNothing() {
    Surroundings noisy =
        new Surroundings(
            Optional.empty(), OptionalDouble.of(60), List.of(), OptionalDouble.empty());
    Question question = aQuestion().around(noisy).build();
    double quiet = QuietPreference.points(assess(question, aCardioid(14, 6).build()), question);
    double hissy = QuietPreference.points(assess(question, aCardioid(14, 20).build()), question);
    assertThat(quiet).isLessThan(-5);
    assertThat(quiet - hissy).isBetween(0.0, 0.01);
  }

  @Test
  void nothingMissingIsAPlainZero() {
    Question question = aQuestion().build();
    Weighed weighed = HeadroomPreference.weigh(assess(question, omni()), question);
    assertThat(1 / weighed.points()).isPositive();
    assertThat(1 / view(question, omni()).aimLossDb()).isPositive();
  }

  private static Microphone omni() {
    return aMicrophone().pattern(PatternName.OMNI, 2, 12).build();
  }

  private static Microphone cardioid() {
    return aCardioid(2, 12).build();
  }

  private static Preamp easy() {
    return aPreamp().maximumInput(60).maximumOutput(60).fullScale(60).build();
  }

  private static PatternView view(Question question, Microphone microphone) {
    return new Assessor(question).views(microphone).get(0);
  }

  private static Assessment assess(Question question, Microphone microphone) {
    return SettingsChoice.choose(new Assessor(question), microphone);
  }
}
