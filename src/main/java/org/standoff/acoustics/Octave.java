package org.standoff.acoustics;

import java.util.List;

/**
 * The ten octave bands of the service, 31.5 Hz to 16 kHz, by the base-ten system of IEC 61260-1:
 * exact midband 1000·10^(3n/10) Hz, edges at 10^(±3/20) of it.
 */
public enum Octave {
  HZ_31_5(-5, 31.5, "31.5"),
  HZ_63(-4, 63, "63"),
  HZ_125(-3, 125, "125"),
  HZ_250(-2, 250, "250"),
  HZ_500(-1, 500, "500"),
  HZ_1K(0, 1000, "1k"),
  HZ_2K(1, 2000, "2k"),
  HZ_4K(2, 4000, "4k"),
  HZ_8K(3, 8000, "8k"),
  HZ_16K(4, 16000, "16k");

  private static final double ABOVE = Math.pow(10, 0.15);
  private static final double BELOW = 1 / ABOVE;
  private static final List<Octave> ALL = List.of(values());

  /** Number of bands. */
  public static final int COUNT = ALL.size();

  private final double nominalHz;
  private final double midHz;
  private final String label;

  Octave(int octavesFrom1KHz, double nominalHz, String label) {
    this.midHz = 1000 * Math.pow(10, 0.3 * octavesFrom1KHz);
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
    return midHz;
  }

  public double lowerHz() {
    return midHz * BELOW;
  }

  public double upperHz() {
    return midHz * ABOVE;
  }

  /** The band's short name: "31.5", "63" … "16k". */
  public String label() {
    return label;
  }

  /** The band in words: "31.5 Hz", "1 kHz". */
  public String words() {
    return label.endsWith("k") ? label.replace("k", " kHz") : label + " Hz";
  }
}
