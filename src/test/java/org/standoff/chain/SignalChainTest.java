package org.standoff.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standoff.acoustics.HighPass;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PeakSpl;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

class SignalChainTest {
  private static final PeakSpl PEAK = new PeakSpl(130);
  private static final HighPass CORNER = new HighPass(125, 2);

  /** Half of the energy at 63 Hz with a rise of 10 dB, half at 1 kHz with none. */
  private static final PatternRise RISE =
      PatternRise.of(
          Octaves.of(0, 0.5, 0, 0, 0, 0.5, 0, 0, 0, 0),
          Octaves.of(12, 10, 4, 1, 0, 0, 0, 0, 0, 0),
          Optional.empty());

  @Test
  void thePatternsRiseReachesEveryStage() {
    Reading without = read(settings(Optional.empty()), PatternRise.NOT_COUNTED);
    Reading with = read(settings(Optional.empty()), RISE);
    double riseDb = 10 * Math.log10(0.5 * 10 + 0.5);
    for (Stage stage : Stage.values()) {
      assertThat(without.headrooms().of(stage) - with.headrooms().of(stage))
          .as(stage.id())
          .isCloseTo(riseDb, within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource(FilterPlace.class)
  void aFilterRelievesOnlyTheStagesThatFollowIt(FilterPlace place) {
    Reading flat = read(settings(Optional.empty()), RISE);
    Reading filtered = read(settings(Optional.of(new Filter(CORNER, place))), RISE);
    double at63Hz = CORNER.powerGain(1000 * Math.pow(10, -1.2));
    double at1Khz = CORNER.powerGain(1000);
    double reliefDb = 10 * Math.log10(5.5) - 10 * Math.log10(0.5 * 10 * at63Hz + 0.5 * at1Khz);
    assertThat(reliefDb).isGreaterThan(5);
    double electronics = place == FilterPlace.BEFORE_ELECTRONICS ? reliefDb : 0;
    double input = place == FilterPlace.PREAMP ? 0 : reliefDb;
    assertThat(filtered.headrooms().electronicsDb() - flat.headrooms().electronicsDb())
        .isCloseTo(electronics, within(1e-9));
    assertThat(filtered.headrooms().preampInputDb() - flat.headrooms().preampInputDb())
        .isCloseTo(input, within(1e-9));
    assertThat(filtered.headrooms().preampOutputDb() - flat.headrooms().preampOutputDb())
        .isCloseTo(reliefDb, within(1e-9));
    assertThat(filtered.headrooms().converterDb() - flat.headrooms().converterDb())
        .isCloseTo(reliefDb, within(1e-9));
  }

  @Test
  void padsRelieveWhatFollowsThem() {
    Settings flat = settings(Optional.empty());
    Headrooms without = read(flat, RISE).headrooms();
    assertThat(gained(flat.withPad(new Pad(10, PadPosition.BEFORE_ELECTRONICS)), without))
        .isEqualTo("10 10 10 10");
    assertThat(gained(flat.withPad(new Pad(10, PadPosition.AFTER_ELECTRONICS)), without))
        .isEqualTo("0 10 10 10");
    assertThat(gained(flat.withInLinePadDb(20), without)).isEqualTo("0 20 20 20");
    assertThat(gained(flat.withPreampPadDb(15), without)).isEqualTo("0 15 15 15");
  }

  @Test
  void anAimOffTheSourceLowersTheOutputButIsNoPadForTheElectronics() {
    Headrooms on = read(settings(Optional.empty()), RISE).headrooms();
    Headrooms off = read(settings(Optional.empty()), RISE.aimedOff(-6)).headrooms();
    assertThat(off.electronicsDb()).isEqualTo(on.electronicsDb());
    assertThat(off.preampInputDb() - on.preampInputDb()).isCloseTo(6, within(1e-9));
  }

  @Test
  void aCapsuleLimitUnderTheRatedMaximumDoesNotLowerIt() {
    Microphone microphone =
        MicrophoneBuilder.aCardioid(10, 12).bears(140).capsuleLimit(135).build();
    assertThat(microphone.bears(Pad.OUT).db()).isEqualTo(140);
    assertThat(microphone.bears(new Pad(10, PadPosition.BEFORE_ELECTRONICS)).db()).isEqualTo(140);
  }

  @Test
  void aPatternNeverBuysHeadroomWhereItsRiseOrResponseIsNegative() {
    PatternRise rise =
        PatternRise.of(
            Octaves.of(0, 0, 0, 0, 0, 1, 0, 0, 0, 0),
            Octaves.filled(-0.4),
            Optional.of(Octaves.filled(-3)));
    assertThat(rise.aheadDb()).isZero();
  }

  @Test
  void aRisingResponseOnTheAxisCountsLikeAPatternsRise() {
    PatternRise rise =
        PatternRise.of(
            Octaves.of(0, 0, 0, 0, 0, 0, 0, 0, 1, 0),
            Octaves.filled(0),
            Optional.of(Octaves.of(0, 0, 0, 0, 0, 0, 0, 0, 4, 0)));
    assertThat(rise.aheadDb()).isCloseTo(4, within(1e-9));
  }

  @Test
  void withoutASpectrumNothingIsCountedNotEvenAFilter() {
    assertThat(PatternRise.NOT_COUNTED.counted()).isFalse();
    assertThat(RISE.counted()).isTrue();
    assertThat(PatternRise.NOT_COUNTED.behindDb(CORNER)).isZero();
  }

  private static String gained(Settings settings, Headrooms without) {
    Headrooms with = read(settings, RISE).headrooms();
    StringBuilder gained = new StringBuilder();
    for (Stage stage : Stage.values()) {
      gained.append(Math.round(with.of(stage) - without.of(stage))).append(' ');
    }
    return gained.toString().strip();
  }

  private static Reading read(Settings settings, PatternRise rise) {
    return new SignalChain(microphone(), PreampBuilder.aPreamp().build())
        .read(settings, PEAK, rise, GainRule.given(0));
  }

  private static Microphone microphone() {
    return MicrophoneBuilder.aCardioid(10, 12).build();
  }

  private static Settings settings(Optional<Filter> filter) {
    return new Settings(
        "main", microphone().outputs().get(0).patterns().get(0), filter, Pad.OUT, 0, 0);
  }
}
