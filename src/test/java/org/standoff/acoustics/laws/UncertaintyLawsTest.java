package org.standoff.acoustics.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.UncertainDb;

class UncertaintyLawsTest {
  @Property(seed = "41")
  void aPercentileLeadsBackToItsProbability(
      @ForAll @DoubleRange(min = -60, max = 160) double typicalDb,
      @ForAll @DoubleRange(min = 0.1, max = 20) double spreadDb,
      @ForAll @DoubleRange(min = 1e-6, max = 0.999999) @Scale(6) double p) {
    UncertainDb figure = new UncertainDb(typicalDb, spreadDb);
    assertThat(figure.probabilityAbove(figure.percentile(p))).isCloseTo(1 - p, within(1e-9));
  }

  @Property(seed = "42")
  void aHigherLimitIsNeverExceededMoreOften(
      @ForAll @DoubleRange(min = 0, max = 20) double spreadDb,
      @ForAll @DoubleRange(min = -60, max = 60) double oneDb,
      @ForAll @DoubleRange(min = -60, max = 60) double otherDb) {
    UncertainDb figure = new UncertainDb(0, spreadDb);
    assertThat(figure.probabilityAbove(Math.max(oneDb, otherDb)))
        .isLessThanOrEqualTo(figure.probabilityAbove(Math.min(oneDb, otherDb)));
  }

  @Property(seed = "43")
  void theOrderInWhichIndependentSpreadsMeetDoesNotMatter(
      @ForAll @DoubleRange(min = 0, max = 20) double aDb,
      @ForAll @DoubleRange(min = 0, max = 20) double bDb,
      @ForAll @DoubleRange(min = 0, max = 20) double cDb) {
    UncertainDb a = new UncertainDb(1, aDb);
    UncertainDb b = new UncertainDb(2, bDb);
    UncertainDb c = new UncertainDb(3, cDb);
    assertThat(a.with(b).with(c).spreadDb())
        .isCloseTo(c.with(a).with(b).spreadDb(), within(1e-12))
        .isGreaterThanOrEqualTo(Math.max(aDb, Math.max(bDb, cDb)));
  }

  /** 200,000 draws: three standard errors of a share of 5 % are 0.15 %. */
  @Test
  void drawsFromTwoIndependentSpreadsAgreeWithTheirSum() {
    UncertainDb player = new UncertainDb(141, 6);
    UncertainDb sheet = new UncertainDb(0, 2);
    double limit = player.with(sheet).high();
    Random random = new Random(44);
    int draws = 200_000;
    int above = 0;
    for (int i = 0; i < draws; i++) {
      double drawn =
          141 + player.sigmaDb() * random.nextGaussian() + sheet.sigmaDb() * random.nextGaussian();
      above += drawn > limit ? 1 : 0;
    }
    assertThat((double) above / draws).isCloseTo(0.05, within(0.0015));
  }
}
