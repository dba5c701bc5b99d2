package org.standoff.advice;

import java.util.function.DoubleUnaryOperator;
import org.standoff.acoustics.UncertainDb;
import org.standoff.chain.Headrooms;

/**
 * Probability that the highest peak clips at least one stage. The peak is a normal in dB that all
 * stages share; the limit of the electronics may be uncertain by itself.
 */
public final class ClipRisk {
  /** Simpson steps over ± eight sigma: far past the accuracy of any level that is known. */
  private static final int STEPS = 400;

  private static final double REACH_SIGMA = 8;

  private ClipRisk() {}

  /**
   * The probability, 0..1.
   *
   * @param peak the peak with its spread; only the spread counts
   * @param typical headrooms at the typical peak
   * @param sheetSpreadDb half of the 5..95 % range of the electronics' limit, in dB
   */
  public static double probability(UncertainDb peak, Headrooms typical, double sheetSpreadDb) {
    UncertainDb excess = new UncertainDb(0, peak.spreadDb());
    double certain =
        Math.min(
            typical.preampInputDb(), Math.min(typical.preampOutputDb(), typical.converterDb()));
    if (sheetSpreadDb == 0) {
      return excess.probabilityAbove(Math.min(certain, typical.electronicsDb()));
    }
    UncertainDb electronics = new UncertainDb(typical.electronicsDb(), sheetSpreadDb);
    if (peak.spreadDb() == 0) {
      return certain < 0 ? 1 : 1 - electronics.probabilityAbove(0);
    }
    return peak.spreadDb() < sheetSpreadDb
        ? overPeaks(excess, certain, electronics)
        : overLimits(excess, certain, electronics);
  }

  /** Over the narrower of the two, so that the other is smooth between two steps: the peaks. */
  private static double overPeaks(UncertainDb excess, double certain, UncertainDb electronics) {
    double reachDb = REACH_SIGMA * excess.sigmaDb();
    double toDb = Math.min(certain, reachDb);
    double past = excess.probabilityAbove(certain);
    return toDb <= -reachDb
        ? past
        : past + mean(excess, -reachDb, toDb, x -> 1 - electronics.probabilityAbove(x));
  }

  /** The same over the limits of the electronics. */
  private static double overLimits(UncertainDb excess, double certain, UncertainDb electronics) {
    double typicalDb = electronics.typicalDb();
    double reachDb = REACH_SIGMA * electronics.sigmaDb();
    return mean(
        electronics,
        typicalDb - reachDb,
        typicalDb + reachDb,
        limit -> excess.probabilityAbove(Math.min(limit, certain)));
  }

  /** Mean of a chance over a normal figure between two values of it, by Simpson's rule. */
  private static double mean(
      UncertainDb figure, double fromDb, double toDb, DoubleUnaryOperator chance) {
    double sigma = figure.sigmaDb();
    double step = (toDb - fromDb) / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double value = fromDb + i * step;
      double x = (value - figure.typicalDb()) / sigma;
      double simpson = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += simpson * Math.exp(-x * x / 2) * chance.applyAsDouble(value);
    }
    return sum * step / (3 * sigma * Math.sqrt(2 * Math.PI));
  }
}
