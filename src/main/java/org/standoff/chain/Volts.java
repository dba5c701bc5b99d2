package org.standoff.chain;

import org.standoff.acoustics.Level;
import org.standoff.acoustics.RmsSpl;

/** Voltages as levels: dBu re √0.6 V (1 mW in 600 ohm), dBV re 1 V. */
public final class Volts {
  /** 0 dBu, in V. */
  public static final double DBU_REFERENCE_V = Math.sqrt(0.6);

  /** What is added to dBV to get dBu, in dB (2.218). */
  public static final double DBU_MINUS_DBV_DB = -Level.ofAmplitudeRatio(DBU_REFERENCE_V);

  private Volts() {}

  /** Voltage as dBu; −∞ for 0 V. */
  public static double dbu(double volts) {
    return Level.ofAmplitudeRatio(volts / DBU_REFERENCE_V);
  }

  /** dBu as a voltage, in V. */
  public static double ofDbu(double dbu) {
    return DBU_REFERENCE_V * Level.amplitudeRatio(dbu);
  }

  /** Sensitivity in mV/Pa as dBV re 1 V/Pa. */
  public static double sensitivityDbv(double mvPerPa) {
    return Level.ofAmplitudeRatio(mvPerPa / 1000);
  }

  /** dBV re 1 V/Pa as mV/Pa. */
  public static double sensitivityMvPerPa(double dbvPerPa) {
    return 1000 * Level.amplitudeRatio(dbvPerPa);
  }

  /** Output at a sound level, open circuit, no pad, in dBu (rms in, rms out). */
  public static double outputDbu(double mvPerPa, RmsSpl level) {
    return dbu(mvPerPa / 1000) + level.db() - RmsSpl.ONE_PASCAL_DB;
  }

  /** The sound level that gives a voltage level, in dB SPL: the inverse of {@link #outputDbu}. */
  public static double asSplDb(double mvPerPa, double dbu) {
    return dbu - dbu(mvPerPa / 1000) + RmsSpl.ONE_PASCAL_DB;
  }

  /**
   * What a load takes off, in dB, ≤ 0: 20 lg(Zin/(Zin + Zs)).
   *
   * @param sourceOhm output impedance of what feeds, in ohm
   * @param loadOhm input impedance of what is fed, in ohm
   */
  public static double loadingDb(double sourceOhm, double loadOhm) {
    return Level.ofAmplitudeRatio(loadOhm / (loadOhm + sourceOhm));
  }
}
