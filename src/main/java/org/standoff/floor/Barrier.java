package org.standoff.floor;

import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * A movable screen that stands on the floor.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param widthM above 0
 * @param heightM above 0
 * @param thicknessM ≥ 0
 * @param transmissionLossDb per octave, ≥ 0
 * @param absorption absorption coefficient of either face per octave, 0 to 1
 */
public record Barrier(
    String id,
    String title,
    double widthM,
    double heightM,
    double thicknessM,
    Octaves transmissionLossDb,
    Octaves absorption) {
  private static final double FIELD_INCIDENCE_DB = 47;

  public Barrier {
    if (!(widthM > 0 && heightM > 0 && thicknessM >= 0)
        || !Double.isFinite(widthM + heightM + thicknessM)) {
      throw new IllegalArgumentException(
          "a barrier is wider and higher than 0 m, not " + widthM + ", " + heightM + " m");
    }
    for (Octave octave : Octave.all()) {
      double alpha = absorption.get(octave);
      if (!(transmissionLossDb.get(octave) >= 0) || !(alpha >= 0 && alpha <= 1)) {
        throw new IllegalArgumentException(
            "at "
                + octave.label()
                + " Hz a transmission loss is 0 dB or more and an absorption from 0 to 1");
      }
    }
  }

  /**
   * Field-incidence mass law, TL = 20 lg(m f) − 47 in dB, no lower than 0 (from memory of the
   * handbooks); holds well below the panel's coincidence frequency.
   *
   * @param kgPerM2 m > 0, mass per area
   * @param hz f > 0
   */
  public static double massLawDb(double kgPerM2, double hz) {
    return Math.max(Level.ofAmplitudeRatio(kgPerM2 * hz) - FIELD_INCIDENCE_DB, 0);
  }

  /** {@link #massLawDb} at the midbands, for a panel of which only the mass is known. */
  public static Octaves transmissionOfMassDb(double kgPerM2) {
    return Octaves.of(
        Octave.all().stream().mapToDouble(band -> massLawDb(kgPerM2, band.midHz())).toArray());
  }

  /** Equivalent absorption area of both faces per octave, in m². */
  public Octaves absorptionAreaM2() {
    return absorption.map(alpha -> 2 * widthM * heightM * alpha);
  }
}
