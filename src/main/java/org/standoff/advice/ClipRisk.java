package org.standoff.advice;

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
    return clean(excess, certain, new UncertainDb(typical.electronicsDb(), sheetSpreadDb));
  }

  /** 1 − P(excess ≤ certain and excess ≤ electronics), over the electronics' limit. */
  private static double clean(UncertainDb excess, double certain, UncertainDb electronics) {
    double sigma = electronics.sigmaDb();
    double step = 2 * REACH_SIGMA * sigma / STEPS;
    double clips = 0;
    double weightSum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double limit = electronics.typicalDb() - REACH_SIGMA * sigma + i * step;
      double x = (limit - electronics.typicalDb()) / sigma;
      double simpson = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      double weight = simpson * Math.exp(-x * x / 2);
      weightSum += weight;
      clips += weight * excess.probabilityAbove(Math.min(limit, certain));
    }
    return clips / weightSum;
  }
}
