package org.standoff.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standoff.acoustics.PatternName;
import org.standoff.fixture.MicrophoneBuilder;

/** Differences of sheets, by hand. */
class ExchangeTest {
  private static final Microphone MULTI = MicrophoneBuilder.aMultiPattern().build();

  @Test
  void aQuietMultiPatternReplacedByASmallCardioidLosesTwoPatternsAndFourDecibels() {
    // the demo's ldc-multi-1 (135 dB, pads 10 and 20, 17 mV/Pa, 10 dBA) and sdc-card-1 (137 dB, the
    // same pads, 11 mV/Pa, 16 dBA): 20 lg(11/17) = -3.78
    Microphone wanted =
        MicrophoneBuilder.aMicrophone()
            .pattern(PatternName.OMNI, 17, 10)
            .pattern(PatternName.CARDIOID, 17, 10)
            .pattern(PatternName.FIGURE_8, 17, 10)
            .bears(135)
            .padBefore(10)
            .padBefore(20)
            .build();
    Microphone other =
        MicrophoneBuilder.aCardioid(11, 16).bears(137).padBefore(10).padBefore(20).build();
    Exchange exchange = Exchange.of(wanted, other);
    assertThat(exchange.maximumChangeDb()).isEqualTo(2);
    assertThat(exchange.limitChangeDb()).isEqualTo(2);
    assertThat(exchange.selfNoiseChangeDb()).isEqualTo(6);
    assertThat(exchange.sensitivityChangeDb()).isCloseTo(-3.78, within(0.005));
    assertThat(exchange.lacks())
        .extracting(Exchange.Lack::pattern)
        .containsExactly(PatternName.OMNI, PatternName.FIGURE_8);
    // a cardioid rejects 4.77 dB of a diffuse field, a figure-8 the same, an omni none
    assertThat(exchange.lacks().get(0).directivityChangeDb()).isCloseTo(4.77, within(0.005));
    assertThat(exchange.lacks().get(1).directivityChangeDb()).isCloseTo(0, within(1e-9));
    // √(1/RE) with the random efficiencies of Eargle, Table 6-1: 1 for an omni, 1/3 for the others
    assertThat(exchange.lacks().get(0).distanceRatio()).isCloseTo(1.732, within(0.0005));
    assertThat(exchange.lacks().get(1).distanceRatio()).isCloseTo(1, within(1e-9));
    assertThat(exchange.lostDb()).isEqualTo(6);
  }

  @Test
  void aPadAheadOfTheElectronicsCountsForTheLimitAndNotForTheMaximumWithoutIt() {
    Microphone padded = MicrophoneBuilder.aCardioid(10, 12).bears(130).padBefore(20).build();
    Microphone bare = MicrophoneBuilder.aCardioid(10, 12).bears(140).build();
    Exchange exchange = Exchange.of(padded, bare);
    assertThat(exchange.maximumChangeDb()).isEqualTo(10);
    assertThat(exchange.limitChangeDb()).isEqualTo(-10);
    assertThat(exchange.lostDb()).isEqualTo(10);
  }

  @Test
  void aBoundaryIsLikeNoPatternThatStandsFree() {
    Microphone omni = MicrophoneBuilder.aMicrophone().pattern(PatternName.OMNI, 10, 12).build();
    Microphone boundary =
        MicrophoneBuilder.aMicrophone().pattern(PatternName.HALF_OMNI, 10, 12).build();
    assertThat(Exchange.of(omni, boundary).lacks())
        .extracting(Exchange.Lack::nearest)
        .containsExactly(PatternName.HALF_OMNI);
  }

  @Test
  void whateverLacksNoPatternComesBeforeWhateverIsQuieter() {
    Microphone cardioid = MicrophoneBuilder.aCardioid(14, 12).build();
    Exchange noisy = Exchange.of(cardioid, MicrophoneBuilder.aCardioid(14, 25).build());
    Exchange omni =
        Exchange.of(
            cardioid, MicrophoneBuilder.aMicrophone().pattern(PatternName.OMNI, 14, 5).build());
    assertThat(Exchange.LEAST_LOST_FIRST.compare(noisy, omni)).isNegative();
    assertThat(Exchange.of(cardioid, MULTI).lacks()).isEmpty();
  }
}
