package org.standoff.acoustics;

/**
 * Decay time, critical distance and their limits in a mixing room. Absorption area A in m², volume
 * V in m³.
 */
public final class Reverberation {
  /** 24 ln 10/c in s/m at ordinary room temperature, as every handbook rounds it. */
  private static final double SABINE_S_PER_M = 0.161;

  private static final double SCHROEDER_FACTOR = 2000;

  private Reverberation() {}

  /** T = 0.161 V/A in s (Sabine), mean absorption up to about 0.2; A includes 4mV if air counts. */
  public static double sabineS(double volumeM3, double areaM2) {
    return SABINE_S_PER_M * volumeM3 / areaM2;
  }

  /**
   * T = 0.161 V/(−S ln(1 − ᾱ) + 4mV) in s (Eyring); ᾱ ≥ 1 gives 0.
   *
   * @param areaM2 absorption of the surfaces alone
   * @param airAreaM2 4mV, or 0
   */
  public static double eyringS(double volumeM3, double areaM2, double surfaceM2, double airAreaM2) {
    double left = Math.max(1 - areaM2 / surfaceM2, 0);
    return SABINE_S_PER_M * volumeM3 / (-surfaceM2 * Math.log(left) + airAreaM2);
  }

  /** A = 0.161 V/T in m², from a measured decay. */
  public static double areaOfDecayM2(double volumeM3, double decayS) {
    return SABINE_S_PER_M * volumeM3 / decayS;
  }

  /** √(Q A/(16π)) in m: where direct sound and the classical field 4/A are equal. */
  public static double criticalDistanceM(double areaM2, double directivityFactor) {
    return Math.sqrt(directivityFactor * areaM2 / (16 * Math.PI));
  }

  /** 2000 √(T/V) in Hz (Schroeder): below it single modes rule and room laws do not hold. */
  public static double schroederHz(double volumeM3, double decayS) {
    return SCHROEDER_FACTOR * Math.sqrt(decayS / volumeM3);
  }
}
