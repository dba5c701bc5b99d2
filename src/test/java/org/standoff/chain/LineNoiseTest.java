package org.standoff.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.PatternName;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

class LineNoiseTest {
  private static final InputNoise AT_TWO_GAINS =
      new InputNoise(150, List.of(new InputNoise.Point(60, -128), new InputNoise.Point(10, -108)));

  @ParameterizedTest(name = "{0} dB of gain: {1} dBu")
  @CsvSource({"0, -108", "10, -108", "35, -118", "60, -128", "70, -128"})
  void inputNoiseIsStraightBetweenItsPointsAndConstantOutside(double gainDb, double einDbu) {
    assertThat(AT_TWO_GAINS.einDbu(gainDb)).isCloseTo(einDbu, within(1e-9));
  }

  @Test
  void aFigureUnderItsOwnThermalNoiseContradictsPhysics() {
    InputNoise impossible = new InputNoise(150, List.of(new InputNoise.Point(60, -131)));
    assertThat(impossible.contradictsPhysics(60)).isTrue();
    assertThat(impossible.amplifierDbu(60)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(AT_TWO_GAINS.contradictsPhysics(60)).isFalse();
  }

  @Test
  void aPadAheadOfTheElectronicsRaisesSelfNoiseAndPreampNoiseByItself() {
    NoiseBudget out = budget(condenser(), Pad.OUT, 0);
    NoiseBudget in = budget(condenser(), new Pad(10, PadPosition.BEFORE_ELECTRONICS), 0);
    assertThat(in.microphoneDba() - out.microphoneDba()).isCloseTo(10, within(1e-9));
    assertThat(in.preampDba() - out.preampDba()).isCloseTo(10, within(1e-9));
  }

  @Test
  void aPadBehindTheElectronicsOrInTheLeadRaisesOnlyThePreampsNoise() {
    NoiseBudget out = budget(condenser(), Pad.OUT, 0);
    NoiseBudget behind = budget(condenser(), new Pad(10, PadPosition.AFTER_ELECTRONICS), 0);
    NoiseBudget lead = budget(condenser(), Pad.OUT, 20);
    assertThat(behind.microphoneDba()).isEqualTo(out.microphoneDba());
    assertThat(behind.preampDba() - out.preampDba()).isCloseTo(10, within(1e-9));
    assertThat(lead.microphoneDba()).isEqualTo(out.microphoneDba());
    assertThat(lead.preampDba() - out.preampDba()).isCloseTo(20, within(1e-9));
  }

  @Test
  void aMovingCoilMakesTheThermalNoiseOfItsImpedance() {
    Microphone coil =
        MicrophoneBuilder.aMicrophone()
            .of(Transducer.MOVING_COIL)
            .impedanceOhm(250)
            .passivePattern(PatternName.CARDIOID, 1.8)
            .build();
    assertThat(budget(coil, Pad.OUT, 0).microphoneDba())
        .isCloseTo(
            Volts.asSplDb(1.8, ThermalNoise.dbu(250)) + AWeighting.whiteNoiseDb(), within(1e-9));
  }

  @Test
  void aDirectionalMicrophoneHearsLessOfTheRoomsNoise() {
    Settings settings = settings(condenser(), Pad.OUT, 0);
    SignalChain chain = new SignalChain(condenser(), PreampBuilder.aPreamp().build());
    NoiseBudget budget = LineNoise.of(chain, settings, 40, OptionalDouble.of(30));
    assertThat(budget.roomDba().orElseThrow()).isCloseTo(30 - 10 * Math.log10(3), within(1e-9));
    assertThat(budget.dominant()).isEqualTo("room");
  }

  @Test
  void theLargestPartIsNamed() {
    assertThat(new NoiseBudget(OptionalDouble.empty(), 12, 3).dominant()).isEqualTo("microphone");
    assertThat(new NoiseBudget(OptionalDouble.of(2), 12, 13).dominant()).isEqualTo("preamp");
    assertThat(new NoiseBudget(OptionalDouble.of(14), 12, 13).dominant()).isEqualTo("room");
  }

  private static Microphone condenser() {
    return MicrophoneBuilder.aCardioid(15, 12).build();
  }

  private static NoiseBudget budget(Microphone microphone, Pad pad, double inLinePadDb) {
    SignalChain chain = new SignalChain(microphone, PreampBuilder.aPreamp().build());
    return LineNoise.of(chain, settings(microphone, pad, inLinePadDb), 40, OptionalDouble.empty());
  }

  private static Settings settings(Microphone microphone, Pad pad, double inLinePadDb) {
    return new Settings(
        "main",
        microphone.outputs().get(0).patterns().get(0),
        Optional.empty(),
        pad,
        inLinePadDb,
        0);
  }
}
