package org.standoff.chain.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.standoff.acoustics.PeakSpl;
import org.standoff.chain.Gain;
import org.standoff.chain.GainRange;
import org.standoff.chain.GainRule;
import org.standoff.chain.GainVerdict;
import org.standoff.chain.Headrooms;
import org.standoff.chain.InputNoise;
import org.standoff.chain.LineNoise;
import org.standoff.chain.Microphone;
import org.standoff.chain.NoiseBudget;
import org.standoff.chain.Pad;
import org.standoff.chain.PadPosition;
import org.standoff.chain.PatternRise;
import org.standoff.chain.Preamp;
import org.standoff.chain.Settings;
import org.standoff.chain.SignalChain;
import org.standoff.chain.Stage;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

class ChainLawsTest {
  private static final double ROUNDING_DB = 1e-9;

  @Property(seed = "201")
  void morePadNeverLowersTheHeadroomOfAnyStageAtTheSameGain(
      @ForAll @DoubleRange(min = 80, max = 160) double peakDb,
      @ForAll @DoubleRange(min = 0, max = 30) double onePadDb,
      @ForAll @DoubleRange(min = 0, max = 30) double otherPadDb,
      @ForAll PadPosition position,
      @ForAll @DoubleRange(min = 130, max = 160) double capsuleLimitDb) {
    Microphone microphone =
        MicrophoneBuilder.aCardioid(10, 12).capsuleLimit(capsuleLimitDb).build();
    Pad less = new Pad(Math.min(onePadDb, otherPadDb), position);
    Pad more = new Pad(Math.max(onePadDb, otherPadDb), position);
    Headrooms with = read(microphone, flat(microphone).withPad(more), peakDb);
    Headrooms without = read(microphone, flat(microphone).withPad(less), peakDb);
    for (Stage stage : Stage.values()) {
      assertThat(with.of(stage)).isGreaterThanOrEqualTo(without.of(stage) - ROUNDING_DB);
    }
  }

  @Property(seed = "202")
  void aPadInTheLeadOrThePreampNeverMovesTheElectronicsHeadroom(
      @ForAll @DoubleRange(min = 80, max = 160) double peakDb,
      @ForAll @DoubleRange(min = 0, max = 40) double inLinePadDb,
      @ForAll @DoubleRange(min = 0, max = 40) double preampPadDb) {
    Microphone microphone = MicrophoneBuilder.aCardioid(10, 12).build();
    Settings padded = flat(microphone).withInLinePadDb(inLinePadDb).withPreampPadDb(preampPadDb);
    Headrooms with = read(microphone, padded, peakDb);
    Headrooms without = read(microphone, flat(microphone), peakDb);
    assertThat(with.electronicsDb()).isEqualTo(without.electronicsDb());
    assertThat(with.preampInputDb() - without.preampInputDb())
        .isCloseTo(inLinePadDb + preampPadDb, within(ROUNDING_DB));
  }

  @Property(seed = "203")
  void theGainRisesWithTheTargetAndFallsWithThePeak(
      @ForAll @DoubleRange(min = -40, max = 0) double oneTargetDbfs,
      @ForAll @DoubleRange(min = -40, max = 0) double otherTargetDbfs,
      @ForAll @DoubleRange(min = -80, max = 20) double onePeakDbu,
      @ForAll @DoubleRange(min = -80, max = 20) double otherPeakDbu,
      @ForAll @DoubleRange(min = 0, max = 12) double guardDb) {
    Preamp preamp = PreampBuilder.aPreamp().build();
    double low = Math.min(oneTargetDbfs, otherTargetDbfs);
    double high = Math.max(oneTargetDbfs, otherTargetDbfs);
    double soft = Math.min(onePeakDbu, otherPeakDbu);
    double loud = Math.max(onePeakDbu, otherPeakDbu);
    assertThat(gain(preamp, high, guardDb, soft).setDb())
        .isGreaterThanOrEqualTo(gain(preamp, low, guardDb, soft).setDb())
        .isGreaterThanOrEqualTo(gain(preamp, high, guardDb, loud).setDb());
  }

  @Property(seed = "204")
  void aGainInsideTheRangeIsAStepAtOrJustUnderTheWantedOne(
      @ForAll @DoubleRange(min = -10, max = 20) double leastDb,
      @ForAll @DoubleRange(min = 0.1, max = 10) double stepDb,
      @ForAll @DoubleRange(min = 0, max = 1) double place) {
    GainRange range = new GainRange(leastDb, leastDb + 50, stepDb);
    double wantedDb = leastDb + 50 * place;
    double setDb = range.settingFor(wantedDb);
    assertThat(setDb).isBetween(wantedDb - stepDb, wantedDb + 1e-8).isGreaterThanOrEqualTo(leastDb);
    assertThat(Math.rint((setDb - leastDb) / stepDb))
        .isCloseTo((setDb - leastDb) / stepDb, within(1e-6));
    assertThat(range.settingFor(setDb)).isCloseTo(setDb, within(1e-9));
  }

  @Property(seed = "205")
  void theGuardedPeakKeepsTheWantedHeadroomBehindThePreampWhereTheGainCanBeSet(
      @ForAll @DoubleRange(min = -60, max = 5) double peakDbu,
      @ForAll @DoubleRange(min = 0, max = 12) double guardDb,
      @ForAll @DoubleRange(min = 0, max = 8) double wantedDb) {
    Preamp preamp = PreampBuilder.aPreamp().maximumOutput(16).build();
    Gain gain = new GainRule(Optional.empty(), 0, guardDb, wantedDb).gain(preamp, peakDbu);
    if (gain.verdict() != GainVerdict.BELOW_RANGE) {
      assertThat(16 - (peakDbu + guardDb + gain.setDb())).isGreaterThanOrEqualTo(wantedDb - 1e-8);
    }
  }

  @Property(seed = "206")
  void allNoiseIsNeverBelowItsLargestPart(
      @ForAll @DoubleRange(min = -20, max = 60) double roomDba,
      @ForAll @DoubleRange(min = -20, max = 60) double microphoneDba,
      @ForAll @DoubleRange(min = -20, max = 60) double preampDba) {
    NoiseBudget budget = new NoiseBudget(OptionalDouble.of(roomDba), microphoneDba, preampDba);
    double largest = Math.max(roomDba, Math.max(microphoneDba, preampDba));
    assertThat(budget.totalDba())
        .isBetween(largest - ROUNDING_DB, largest + 10 * Math.log10(3) + ROUNDING_DB);
    double named =
        switch (budget.dominant()) {
          case "room" -> roomDba;
          case "microphone" -> microphoneDba;
          default -> preampDba;
        };
    assertThat(named).isEqualTo(largest);
  }

  @Property(seed = "207")
  void attenuationNeverLowersTheNoise(
      @ForAll @DoubleRange(min = 0, max = 30) double padDb,
      @ForAll @DoubleRange(min = 0, max = 30) double inLinePadDb,
      @ForAll PadPosition position,
      @ForAll @DoubleRange(min = 0, max = 60) double gainDb) {
    Microphone microphone = MicrophoneBuilder.aCardioid(10, 12).build();
    Settings padded =
        flat(microphone).withPad(new Pad(padDb, position)).withInLinePadDb(inLinePadDb);
    assertThat(noise(microphone, padded, gainDb))
        .isGreaterThanOrEqualTo(noise(microphone, flat(microphone), gainDb) - ROUNDING_DB);
  }

  @Property(seed = "208")
  void theAmplifierIsQuieterThanItsMeasuredFigure(
      @ForAll @DoubleRange(min = -140, max = -90) double einDbu,
      @ForAll @DoubleRange(min = 1, max = 1000) double sourceOhm) {
    InputNoise noise = new InputNoise(sourceOhm, List.of(new InputNoise.Point(40, einDbu)));
    assertThat(noise.amplifierDbu(40)).isLessThan(einDbu);
    if (!noise.contradictsPhysics(40)) {
      assertThat(LineNoise.passiveTotalDbu(noise, 40, sourceOhm)).isCloseTo(einDbu, within(1e-6));
    }
  }

  @Property(seed = "209")
  void theStageThatClipsFirstHasTheLeastHeadroom(
      @ForAll @DoubleRange(min = -20, max = 40) double electronicsDb,
      @ForAll @DoubleRange(min = -20, max = 40) double inputDb,
      @ForAll @DoubleRange(min = -20, max = 40) double outputDb,
      @ForAll @DoubleRange(min = -20, max = 40) double converterDb) {
    Headrooms headrooms = new Headrooms(electronicsDb, inputDb, outputDb, converterDb);
    assertThat(headrooms.of(headrooms.first())).isEqualTo(headrooms.leastDb());
    assertThat(headrooms.least(headrooms)).isEqualTo(headrooms);
  }

  private static Gain gain(Preamp preamp, double targetDbfs, double guardDb, double peakDbu) {
    return new GainRule(Optional.empty(), targetDbfs, guardDb, 4).gain(preamp, peakDbu);
  }

  private static double noise(Microphone microphone, Settings settings, double gainDb) {
    SignalChain chain = new SignalChain(microphone, PreampBuilder.aPreamp().build());
    return LineNoise.of(chain, settings, gainDb, OptionalDouble.of(20)).totalDba();
  }

  private static Headrooms read(Microphone microphone, Settings settings, double peakDb) {
    return new SignalChain(microphone, PreampBuilder.aPreamp().build())
        .read(settings, new PeakSpl(peakDb), PatternRise.NOT_COUNTED, GainRule.given(10))
        .headrooms();
  }

  private static Settings flat(Microphone microphone) {
    return new Settings(
        "main", microphone.outputs().get(0).patterns().get(0), Optional.empty(), Pad.OUT, 0, 0);
  }
}
