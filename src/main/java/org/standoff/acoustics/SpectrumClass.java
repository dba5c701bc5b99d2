package org.standoff.acoustics;

import java.util.Arrays;
import java.util.Optional;

/**
 * Seven shapes of the octave levels of radiated power, in dB against their sum: assumed, from
 * general experience, without a published source.
 */
public enum SpectrumClass {
  LOW_DRUM("low-drum", -10, -5, -5, -8, -12, -14, -16, -19, -24, -31),
  SNARE_DRUM("snare-drum", -40, -22, -12, -5, -7, -8, -8, -9, -12, -18),
  METAL("metal", -50, -40, -30, -22, -15, -11, -9, -6, -5, -8),
  BASS("bass", -14, -5, -4, -6, -10, -15, -20, -26, -34, -45),
  MELODY("melody", -60, -35, -17, -9, -4, -5, -9, -14, -20, -30),
  BRASS("brass", -60, -32, -17, -9, -6, -4, -8, -13, -20, -30),
  WIDE("wide", -25, -12, -8, -6, -5, -7, -11, -16, -23, -32);

  private final String id;
  private final Octaves powerDb;

  SpectrumClass(String id, double... powerDb) {
    this.id = id;
    this.powerDb = Octaves.of(powerDb);
  }

  /** The name in files and answers. */
  public String id() {
    return id;
  }

  /** Octave levels of the radiated power in dB against their sum. */
  public Octaves powerDb() {
    return powerDb;
  }

  /**
   * Shares of the radiated power per octave for a source that plays from {@code lowestHz} to {@code
   * highestHz}: the octaves that overlap the range, renormalised to a sum of 1; 0 elsewhere.
   *
   * @throws IllegalArgumentException when no octave overlaps the range
   */
  public double[] weights(double lowestHz, double highestHz) {
    return Spectrum.of(this, lowestHz, highestHz).powerShares().toArray();
  }

  public static Optional<SpectrumClass> ofId(String id) {
    return Arrays.stream(values()).filter(spectrum -> spectrum.id.equals(id)).findFirst();
  }
}
