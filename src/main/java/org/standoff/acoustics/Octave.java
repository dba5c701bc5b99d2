package org.standoff.acoustics;

import java.util.List;

/**
 * The ten octave bands of the service, 31.5 Hz to 16 kHz, by the base-ten system of IEC 61260-1:
 * exact midband 1000·10^(3n/10) Hz, edges at 10^(±3/20) of it.
 */
public enum Octave {
  HZ_31_5(31.5, "31.5"),
  HZ_63(63, "63"),
  HZ_125(125, "125"),
  HZ_250(250, "250"),
  HZ_500(500, "500"),
  HZ_1K(1000, "1k"),
  HZ_2K(2000, "2k"),
  HZ_4K(4000, "4k"),
  HZ_8K(8000, "8k"),
  HZ_16K(16000, "16k");

  private static final List<Octave> ALL = List.of(values());

  /** Number of bands. */
  public static final int COUNT = ALL.size();

  private final double nominalHz;
  private final String label;

  Octave(double nominalHz, String label) {
    this.nominalHz = nominalHz;
    this.label = label;
  }

  /** All bands, lowest first. */
  public static List<Octave> all() {
    return ALL;
  }

  /** The rounded midband by which the band is called. */
  public double nominalHz() {
    return nominalHz;
  }

  /** The exact midband, 1000·10^(3n/10) Hz; physics uses this one. */
  public double midHz() {
    return 1000 * Math.pow(10, 0.3 * (ordinal() - HZ_1K.ordinal()));
  }

  public double lowerHz() {
    return midHz() * Math.pow(10, -0.15);
  }

  public double upperHz() {
    return midHz() * Math.pow(10, 0.15);
  }

  /** The band's short name: "31.5", "63" … "16k". */
  public String label() {
    return label;
  }
}
