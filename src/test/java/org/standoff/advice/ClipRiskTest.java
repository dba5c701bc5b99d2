package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.UncertainDb;
import org.standoff.chain.Headrooms;
import org.standoff.chain.Microphone;
import org.standoff.fixture.MicrophoneBuilder;

class ClipRiskTest {
  private static final int DRAWS = 200_000;

  /**
   * The share of {@link #DRAWS} independent draws has a standard error of √(p(1 − p)/n), at most
   * 0.0011. Four and a half of them hold with a probability above 0.99999 a case; the seed keeps
   * the draws the same in every run.
   */
  private static final double STANDARD_ERRORS = 4.5;

  /** What a 95th percentile is in standard deviations (tables of the normal distribution). */
  private static final double SIGMAS_AT_95 = 1.6448536269514722;

  @ParameterizedTest(
      name = "electronics {0} dB, input {1} dB, converter {2} dB, peak ± {3} dB, sheet ± {4} dB")
  @CsvSource({
    "1, 10, 10, 6, 0",
    "10, 3, 12, 6, 0",
    "12, 11, 2, 4, 0",
    "0, 0, 0, 6, 0",
    "-2, 8, 8, 6, 0",
    "6, 20, 20, 6, 3",
    "3, 4, 8, 6, 3",
    "5, 2, 9, 6, 3",
    "8, 7, 6, 2, 6",
    "-1, 5, 5, 3, 3",
    "2, 5, 5, 0.1, 3",
    "2, 5, 5, 0, 3",
    "5, -1, 5, 0, 3",
  })
  void drawingPeaksAndSheetsManyTimesGivesTheToldProbability(
      double electronicsDb,
      double inputDb,
      double converterDb,
      double peakSpreadDb,
      double sheetSpreadDb) {
    Headrooms typical = new Headrooms(electronicsDb, inputDb, converterDb + 3, converterDb);
    double told = ClipRisk.probability(new UncertainDb(130, peakSpreadDb), typical, sheetSpreadDb);
    Random random = new Random(20270612);
    int clipped = 0;
    for (int i = 0; i < DRAWS; i++) {
      double over = random.nextGaussian() * peakSpreadDb / SIGMAS_AT_95;
      double limit = electronicsDb + random.nextGaussian() * sheetSpreadDb / SIGMAS_AT_95;
      if (over > limit || over > inputDb || over > converterDb) {
        clipped++;
      }
    }
    double drawn = (double) clipped / DRAWS;
    double error = Math.sqrt(Math.max(told * (1 - told), 1.0 / DRAWS) / DRAWS);
    assertThat(told).isCloseTo(drawn, within(STANDARD_ERRORS * error));
  }

  /** The same through a whole assessment: draws of the player's peak against its own headrooms. */
  @Test
  void theRiskOfAnAssessmentIsTheShareOfPeaksThatClip() {
    Placement placement = aPlacement().peak(1, 131, 6, 110).build();
    Microphone microphone = MicrophoneBuilder.aCardioid(14, 12).bears(133, 3).build();
    Adviser adviser = new Adviser(aQuestion(placement).diffuse(85).build());
    Assessment chosen = adviser.advise(List.of(microphone)).ranked().get(0).assessment();
    UncertainDb peak = adviser.assessor().arrivals().get(0).peak();
    double told = ClipRisk.probability(peak, chosen.levels().typical(), 3);
    Random random = new Random(7);
    int clipped = 0;
    for (int i = 0; i < DRAWS; i++) {
      double peakDb = 131 + random.nextGaussian() * 6 / SIGMAS_AT_95;
      double bearsDb = 133 + 10 * Math.log10(2) + random.nextGaussian() * 3 / SIGMAS_AT_95;
      double riseDb = chosen.levels().loudest().riseAtElectronicsDb();
      double over = peakDb - 131;
      Headrooms typical = chosen.levels().typical();
      if (peakDb + riseDb > bearsDb
          || over > typical.preampInputDb()
          || over > typical.preampOutputDb()
          || over > typical.converterDb()) {
        clipped++;
      }
    }
    double drawn = (double) clipped / DRAWS;
    assertThat(told).isBetween(0.02, 0.3);
    assertThat(told)
        .isCloseTo(drawn, within(STANDARD_ERRORS * Math.sqrt(told * (1 - told) / DRAWS)));
  }

  /** Where only one limit counts the risk is the tail of one normal: an independent library's. */
  @ParameterizedTest(name = "{0} dB of headroom, peak ± {1} dB, sheet ± {2} dB")
  @CsvSource({"4, 6, 0", "7.5, 6, 3", "0.5, 2, 6", "1, 0.05, 3", "1, 0, 3"})
  void againstOneLimitTheRiskIsTheTailOfANormal(
      double headroomDb, double peakSpreadDb, double sheetSpreadDb) {
    double sigma = Math.hypot(peakSpreadDb, sheetSpreadDb) / SIGMAS_AT_95;
    double tail = 1 - new NormalDistribution(0, sigma).cumulativeProbability(headroomDb);
    assertThat(
            ClipRisk.probability(
                new UncertainDb(120, peakSpreadDb),
                new Headrooms(headroomDb, 90, 90, 90),
                sheetSpreadDb))
        .isCloseTo(tail, within(1e-4));
  }

  @Test
  void aSurePeakAgainstASureLimitEitherClipsOrDoesNot() {
    UncertainDb sure = UncertainDb.exactly(120);
    assertThat(ClipRisk.probability(sure, new Headrooms(0.1, 5, 5, 5), 0)).isZero();
    assertThat(ClipRisk.probability(sure, new Headrooms(-0.1, 5, 5, 5), 0)).isEqualTo(1);
  }
}
