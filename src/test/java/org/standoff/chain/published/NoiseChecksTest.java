package org.standoff.chain.published;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.RmsSpl;
import org.standoff.chain.InputNoise;
import org.standoff.chain.LineNoise;
import org.standoff.chain.Microphone;
import org.standoff.chain.NoiseBudget;
import org.standoff.chain.Pad;
import org.standoff.chain.Settings;
import org.standoff.chain.SignalChain;
import org.standoff.chain.ThermalNoise;
import org.standoff.chain.Volts;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

/** Topic C, noise of a line: Johnson and Nyquist 1928, IEC 60268-4; sources stand in each row. */
class NoiseChecksTest {
  private static final InputNoise EIN =
      new InputNoise(150, List.of(new InputNoise.Point(60, -128)));
  private static final String SHEET = "a data sheet's own sum: the catalogue checks sheets by it";

  @TestFactory
  Stream<DynamicTest> noise() {
    return CheckTable.ofTopics("C-noise")
        .row("C01", () -> ThermalNoise.dbu(150))
        .row("C02", () -> ThermalNoise.dbu(200))
        .row("C03", () -> ThermalNoise.dbu(150))
        .row("C04", () -> 1e9 * ThermalNoise.voltsPerRootHz(150))
        .row("C05", () -> Volts.outputDbu(20, new RmsSpl(12)))
        .row("C06", () -> Volts.asSplDb(1.5, -128))
        .row("C07", () -> Level.energySum(-117.7, -128))
        .row("C08", () -> budget().totalDba())
        .row("C09", () -> 75 - budget().totalDba())
        .notHere("C10", SHEET)
        .notHere("C11", SHEET)
        .row("C25", AWeighting::whiteNoiseDb)
        .row("C26", () -> EIN.amplifierDbu(60))
        .row("C27", () -> LineNoise.passiveTotalDbu(EIN, 60, 250))
        .row("C28", () -> Volts.asSplDb(1.8, LineNoise.passiveTotalDbu(EIN, 60, 250)))
        .row("C29", () -> LineNoise.passiveTotalDbu(EIN, 60, 150))
        .row("C30", NoiseChecksTest::amplifierDb)
        .tests();
  }

  private static NoiseBudget budget() {
    return new NoiseBudget(OptionalDouble.of(20), 14, 10);
  }

  private static double amplifierDb() {
    Microphone microphone = MicrophoneBuilder.aCardioid(15, 14).build();
    Settings settings =
        new Settings(
            "main", microphone.outputs().get(0).patterns().get(0), Optional.empty(), Pad.OUT, 0, 0);
    SignalChain chain = new SignalChain(microphone, PreampBuilder.aPreamp().noise(EIN).build());
    return LineNoise.amplifierDb(chain, settings, 60);
  }
}
