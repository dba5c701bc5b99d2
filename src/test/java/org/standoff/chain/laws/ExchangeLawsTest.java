package org.standoff.chain.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.standoff.acoustics.PatternName;
import org.standoff.chain.Exchange;
import org.standoff.chain.Microphone;
import org.standoff.fixture.MicrophoneBuilder;

class ExchangeLawsTest {
  private static final double ROUNDING_DB = 1e-9;

  @Property(seed = "821", tries = 300)
  void aMicrophoneInItsOwnPlaceLosesNothing(@ForAll Random random) {
    Microphone microphone = random(random);
    Exchange none = Exchange.of(microphone, microphone);
    assertThat(none.maximumChangeDb()).isZero();
    assertThat(none.limitChangeDb()).isZero();
    assertThat(none.selfNoiseChangeDb()).isZero();
    assertThat(none.sensitivityChangeDb()).isZero();
    assertThat(none.lacks()).isEmpty();
    assertThat(none.lostDb()).isZero();
  }

  @Property(seed = "822", tries = 300)
  void thereAndBackTheLevelsThatAreBorneChangeByNothing(@ForAll Random random) {
    Microphone one = random(random);
    Microphone other = random(random);
    Exchange there = Exchange.of(one, other);
    Exchange back = Exchange.of(other, one);
    assertThat(there.maximumChangeDb() + back.maximumChangeDb()).isCloseTo(0, within(ROUNDING_DB));
    assertThat(there.limitChangeDb() + back.limitChangeDb()).isCloseTo(0, within(ROUNDING_DB));
    // the worst pattern is told both ways, so noise never comes out better than it went in
    assertThat(there.selfNoiseChangeDb() + back.selfNoiseChangeDb())
        .isGreaterThanOrEqualTo(-ROUNDING_DB);
    assertThat(there.lostDb()).isNotNegative();
  }

  @Property(seed = "823", tries = 300)
  void aLouderLimitIsAGainAndMoreNoiseALoss(@ForAll Random random) {
    double louderDb = random.nextDouble() * 20;
    double noisierDb = random.nextDouble() * 20;
    Microphone wanted = MicrophoneBuilder.aCardioid(10, 12).bears(130).build();
    Microphone other =
        MicrophoneBuilder.aCardioid(10, 12 + noisierDb).bears(130 + louderDb).build();
    Exchange exchange = Exchange.of(wanted, other);
    assertThat(exchange.limitChangeDb()).isCloseTo(louderDb, within(ROUNDING_DB));
    assertThat(exchange.selfNoiseChangeDb()).isCloseTo(noisierDb, within(ROUNDING_DB));
    assertThat(exchange.lostDb()).isCloseTo(noisierDb, within(ROUNDING_DB));
    assertThat(Exchange.of(other, wanted).lostDb()).isCloseTo(louderDb, within(ROUNDING_DB));
  }

  @Property(seed = "824", tries = 300)
  void morePatternsNeverLackMore(@ForAll Random random) {
    Microphone wanted = random(random);
    PatternName first = name(random);
    PatternName second = name(random);
    Microphone few = MicrophoneBuilder.aMicrophone().pattern(first, 10, 12).build();
    Microphone more =
        MicrophoneBuilder.aMicrophone().pattern(first, 10, 12).pattern(second, 10, 12).build();
    assertThat(Exchange.of(wanted, more).lacks())
        .hasSizeLessThanOrEqualTo(Exchange.of(wanted, few).lacks().size());
  }

  private static Microphone random(Random random) {
    MicrophoneBuilder builder = MicrophoneBuilder.aMicrophone();
    for (int i = random.nextInt(4); i >= 0; i--) {
      builder.pattern(name(random), 1 + random.nextInt(25), 5 + random.nextInt(25));
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      builder.padBefore(5 + random.nextInt(20));
    }
    return builder.bears(120 + random.nextInt(40)).build();
  }

  private static PatternName name(Random random) {
    return PatternName.values()[random.nextInt(PatternName.values().length)];
  }
}
