package org.standoff.advice;

import org.standoff.acoustics.UncertainDb;
import org.standoff.chain.Headrooms;

/**
 * How far the guarded peak stands over the typical one. The player's and the distance's spread
 * reach every stage; the spread of the sheet's maximum SPL only the electronics.
 *
 * @param everyStageDb over the typical peak, at every stage but the electronics, in dB
 * @param electronicsDb at the electronics, in dB
 */
record Guard(double everyStageDb, double electronicsDb) {

  /**
   * The guard of a style.
   *
   * @param peak the peak with its spread
   * @param sheetSpreadDb half of the 5..95 % range of the maximum SPL, in dB
   * @param percentile guarded percentile, 50..100
   */
  static Guard of(UncertainDb peak, double sheetSpreadDb, double percentile) {
    double p = percentile / 100;
    double every = peak.percentile(p) - peak.typicalDb();
    if (sheetSpreadDb == 0) {
      return new Guard(every, every);
    }
    UncertainDb margin = peak.with(new UncertainDb(0, sheetSpreadDb));
    return new Guard(every, margin.percentile(p) - margin.typicalDb());
  }

  /** The headrooms that are left at the guarded percentile. */
  Headrooms guarded(Headrooms typical) {
    return new Headrooms(
        typical.electronicsDb() - electronicsDb,
        typical.preampInputDb() - everyStageDb,
        typical.preampOutputDb() - everyStageDb,
        typical.converterDb() - everyStageDb);
  }
}
