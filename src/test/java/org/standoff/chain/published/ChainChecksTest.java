package org.standoff.chain.published;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.HighPass;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.PeakSpl;
import org.standoff.acoustics.Proximity;
import org.standoff.acoustics.RmsSpl;
import org.standoff.chain.GainRule;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.PadPosition;
import org.standoff.chain.PatternRise;
import org.standoff.chain.Preamp;
import org.standoff.chain.Reading;
import org.standoff.chain.Settings;
import org.standoff.chain.SignalChain;
import org.standoff.chain.Volts;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

/** Topics A (voltages), B and the chain's part of W; sources stand in each row. */
class ChainChecksTest {
  /** The rows' own speed of sound. */
  private static final double C = 343.2;

  private static final Pad TEN_BEFORE = new Pad(10, PadPosition.BEFORE_ELECTRONICS);
  private static final Pad TEN_AFTER = new Pad(10, PadPosition.AFTER_ELECTRONICS);
  private static final String SOUND = "sound levels are checked beside the acoustics";

  @TestFactory
  Stream<DynamicTest> voltages() {
    return CheckTable.ofTopics("A-levels")
        .notHere("A01", SOUND)
        .notHere("A02", SOUND)
        .notHere("A03", SOUND)
        .row("A04", () -> Volts.ofDbu(0))
        .row("A05", () -> Volts.DBU_MINUS_DBV_DB)
        .row("A06", () -> Volts.ofDbu(4))
        .row("A07", () -> Volts.sensitivityDbv(10))
        .row("A08", () -> Volts.outputDbu(20, RmsSpl.ofPascals(1)))
        .row("A09", () -> Volts.sensitivityDbv(2))
        .row("A10", () -> Volts.sensitivityMvPerPa(-34))
        .notHere("A11", SOUND)
        .notHere("A12", SOUND)
        .notHere("A13", SOUND)
        .notHere("A14", SOUND)
        .notHere("A15", SOUND)
        .notHere("A16", SOUND)
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> chain() {
    return CheckTable.ofTopics("B-chain")
        .row("B01", () -> sine(10, 130, Pad.OUT).microphoneOutputDbu())
        .row("B02", () -> sine(10, 130, TEN_AFTER).microphoneOutputDbu())
        .row("B03", () -> sine(2, 110, Pad.OUT).microphoneOutputDbu())
        .row("B04", () -> bears(134, TEN_BEFORE, Optional.empty()))
        .row("B05", () -> bears(134, TEN_AFTER, Optional.empty()))
        .row(
            "B06",
            () -> bears(134, new Pad(20, PadPosition.BEFORE_ELECTRONICS), Optional.of(148.0)))
        .row("B07", () -> sine(16, 136, Pad.OUT).microphoneOutputDbu())
        .row("B08", () -> Volts.loadingDb(200, 1000))
        .row("B09", () -> Volts.loadingDb(150, 1500))
        .row("B10", () -> Volts.loadingDb(600, 1200))
        .row("B11", () -> gainDb(-20, -12, 24))
        .row("B12", () -> gainDb(-20, -12, 18))
        .row(
            "B13",
            () -> {
              Reading any = peak(mic(20, 138), Pad.OUT, 120, 20, 0);
              return gainDb(any.preampInputDbu(), -12, 20);
            })
        .row("B14", () -> peak(mic(12, 138), Pad.OUT, 140, 24, 0).headrooms().electronicsDb())
        .row("B15", () -> peak(mic(12, 138), Pad.OUT, 140, 24, 0).headrooms().preampInputDb())
        .row("B16", () -> peak(mic(12, 138), Pad.OUT, 140, 24, 20).headrooms().converterDb())
        .words("B17", () -> first(peak(mic(12, 138), Pad.OUT, 140, 24, 20)))
        .words("B18", () -> first(peak(mic(12, 138), TEN_AFTER, 145, 24, 0)))
        .words("B19", () -> first(overloadedInput()))
        .row("B20", ChainChecksTest::loadedDbu)
        .row("B21", () -> rise().aheadDb())
        .row("B22", () -> rise().behindDb(new HighPass(80, 2)))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> workedExamples() {
    String acoustics = "worked through the acoustics where settings are advised";
    String path = "a path in air: checked where the floor aligns microphones";
    return CheckTable.ofTopics("W-worked")
        .row(
            "W01", () -> gainDb(peak(mic(1.8, 150), Pad.OUT, 140, 18, 0).preampInputDbu(), -10, 18))
        .row("W02", () -> peak(mic(25, 150), Pad.OUT, 140, 18, 0).microphoneOutputDbu())
        .row("W03", () -> peak(mic(25, 150), Pad.OUT, 140, 18, 0).headrooms().preampInputDb())
        .row("W04", () -> peak(mic(25, 150), TEN_BEFORE, 140, 18, 0).headrooms().preampInputDb())
        .row("W05", () -> new HighPass(80, 2).gainDb(41.2))
        .row("W06", () -> Proximity.riseDb(PatternName.CARDIOID.ideal(), 1, 0.05, 100, C))
        .notHere("W07", acoustics)
        .notHere("W08", acoustics)
        .notHere("W09", acoustics)
        .notHere("W10", acoustics)
        .notHere("W11", path)
        .notHere("W12", path)
        .notHere("W13", acoustics)
        .notHere("W14", acoustics)
        .notHere("W15", acoustics)
        .notHere("W16", acoustics)
        .notHere("W17", acoustics)
        .tests();
  }

  private static Microphone mic(double mvPerPa, double bearsDb) {
    return MicrophoneBuilder.aCardioid(mvPerPa, 12).bears(bearsDb).build();
  }

  private static Settings settings(Microphone microphone, Pad pad) {
    return new Settings(
        "main", microphone.outputs().get(0).patterns().get(0), Optional.empty(), pad, 0, 0);
  }

  private static double bears(double bearsDb, Pad pad, Optional<Double> capsuleLimitDb) {
    MicrophoneBuilder builder = MicrophoneBuilder.aCardioid(10, 12).bears(bearsDb);
    capsuleLimitDb.ifPresent(builder::capsuleLimit);
    return builder.build().bears(pad).db();
  }

  /** A sine of an rms level, through a chain with no gain. */
  private static Reading sine(double mvPerPa, double levelDb, Pad pad) {
    double peakDb = new RmsSpl(levelDb).sinePeak().db();
    return peak(mic(mvPerPa, 150), pad, peakDb, 18, 0);
  }

  private static Reading peak(
      Microphone microphone, Pad pad, double peakDb, double fullScaleDbu, double gainDb) {
    Preamp preamp = PreampBuilder.aPreamp().maximumOutput(40).fullScale(fullScaleDbu).build();
    return new SignalChain(microphone, preamp)
        .read(
            settings(microphone, pad),
            new PeakSpl(peakDb),
            PatternRise.NOT_COUNTED,
            GainRule.given(gainDb));
  }

  private static Reading overloadedInput() {
    Microphone microphone = mic(50, 138);
    Preamp preamp = PreampBuilder.aPreamp().maximumInput(0).maximumOutput(40).fullScale(24).build();
    return new SignalChain(microphone, preamp)
        .read(
            settings(microphone, Pad.OUT),
            new PeakSpl(130),
            PatternRise.NOT_COUNTED,
            GainRule.given(0));
  }

  private static String first(Reading reading) {
    return reading.headrooms().first().id();
  }

  private static double gainDb(double dbu, double targetDbfs, double fullScaleDbu) {
    Preamp preamp = PreampBuilder.aPreamp().fullScale(fullScaleDbu).maximumOutput(40).build();
    return GainRule.target(targetDbfs).gain(preamp, dbu).wantedDb();
  }

  /** A peak that leaves a 200 ohm microphone at −10 dBu, at an input of 2000 ohm. */
  private static double loadedDbu() {
    Microphone microphone = MicrophoneBuilder.aCardioid(10, 12).impedanceOhm(200).build();
    Preamp preamp = PreampBuilder.aPreamp().inputImpedance(2000).build();
    double levelDb = Volts.asSplDb(10, -10);
    return new SignalChain(microphone, preamp)
        .read(
            settings(microphone, Pad.OUT),
            new RmsSpl(levelDb).sinePeak(),
            PatternRise.NOT_COUNTED,
            GainRule.given(0))
        .preampInputDbu();
  }

  /** Octave levels of 0, −3, −6 and −9 dB from 63 to 500 Hz at a cardioid 0.15 m from a point. */
  private static PatternRise rise() {
    double[] shares = new double[Octave.COUNT];
    double[] proximity = new double[Octave.COUNT];
    double sum = 0;
    Octave[] octaves = {Octave.HZ_63, Octave.HZ_125, Octave.HZ_250, Octave.HZ_500};
    for (int i = 0; i < octaves.length; i++) {
      int at = octaves[i].ordinal();
      shares[at] = Level.powerRatio(-3.0 * i);
      sum += shares[at];
      proximity[at] =
          Proximity.riseDb(PatternName.CARDIOID.ideal(), 1, 0.15, octaves[i].midHz(), C);
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return PatternRise.of(Octaves.of(shares), Octaves.of(proximity), Optional.empty());
  }
}
