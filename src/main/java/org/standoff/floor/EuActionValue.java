package org.standoff.floor;

import org.standoff.acoustics.PeakSpl;

/**
 * Values of Directive 2003/10/EC, article 3. The limit counts hearing protection, the action values
 * do not. Advice, not law.
 */
public enum EuActionValue {
  LOWER_ACTION("eu-lower-action", 80, 112),
  UPPER_ACTION("eu-upper-action", 85, 140),
  LIMIT("eu-limit", 87, 200);

  private final String id;
  private final double dailyDba;
  private final double peakPa;

  EuActionValue(String id, double dailyDba, double peakPa) {
    this.id = id;
    this.dailyDba = dailyDba;
    this.peakPa = peakPa;
  }

  /** The name in answers. */
  public String id() {
    return id;
  }

  /** LEX,8h in dB(A). */
  public double dailyDba() {
    return dailyDba;
  }

  /** Peak, C-weighted, in pascal as the directive states it. */
  public double peakPa() {
    return peakPa;
  }

  /** The same peak as a level, C-weighted. */
  public PeakSpl peak() {
    return PeakSpl.ofPascals(peakPa);
  }
}
