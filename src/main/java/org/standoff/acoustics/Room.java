package org.standoff.acoustics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A room as its reverberant field sees it.
 *
 * @param volumeM3 V > 0
 * @param surfaceM2 S > 0, all boundaries
 * @param absorptionAreaM2 equivalent absorption area per octave, each above 0: surfaces and
 *     whatever is told as an area (players, curtains). Air is in it only if the room's data say so
 * @param box the box for image sources
 * @param backgroundNoiseDba level of the empty room in dB(A)
 */
public record Room(
    double volumeM3,
    double surfaceM2,
    Octaves absorptionAreaM2,
    Box box,
    Air air,
    double backgroundNoiseDba) {
  private static final double SABINE_LIMIT = 0.2;
  private static final double LONGEST_OVER_SHORTEST = 6;

  public Room {
    if (!(volumeM3 > 0 && surfaceM2 > 0)) {
      throw new IllegalArgumentException(
          "volume and surface are above 0, not " + volumeM3 + " m3, " + surfaceM2 + " m2");
    }
    for (Octave octave : Octave.all()) {
      if (!(absorptionAreaM2.get(octave) > 0)) {
        throw new IllegalArgumentException(
            "the absorption area at " + octave.words() + " Hz must be above 0 m2");
      }
    }
  }

  /** A in m² in {@code octave}, with 4mV of the air added if asked. */
  public double absorptionAreaM2(Octave octave, boolean withAir) {
    return absorptionAreaM2.get(octave) + (withAir ? airAreaM2(octave) : 0);
  }

  /** ᾱ = A/S, without added air. */
  public double meanAbsorption(Octave octave) {
    return absorptionAreaM2.get(octave) / surfaceM2;
  }

  /** Mean of A at 500 Hz and 1 kHz in m², for figures that are told for the whole band. */
  public double midAbsorptionAreaM2() {
    return (absorptionAreaM2.get(Octave.HZ_500) + absorptionAreaM2.get(Octave.HZ_1K)) / 2;
  }

  /** Decay time in s by Sabine, with 4mV of the air added if asked. */
  public double sabineS(Octave octave, boolean withAir) {
    return Reverberation.sabineS(volumeM3, absorptionAreaM2(octave, withAir));
  }

  /** Decay time in s by Sabine on the room's data as they stand. */
  public double sabineS(Octave octave) {
    return sabineS(octave, false);
  }

  /** Decay time in s by Eyring, with 4mV of the air added if asked. */
  public double eyringS(Octave octave, boolean withAir) {
    return Reverberation.eyringS(
        volumeM3, absorptionAreaM2.get(octave), surfaceM2, withAir ? airAreaM2(octave) : 0);
  }

  /** Decay time in s by Eyring on the room's data as they stand. */
  public double eyringS(Octave octave) {
    return eyringS(octave, false);
  }

  /** Critical distance in m for a source of directivity factor {@code q}. */
  public double criticalDistanceM(Octave octave, double q) {
    return Reverberation.criticalDistanceM(absorptionAreaM2.get(octave), q);
  }

  /** Schroeder frequency in Hz, from the decay in the middle of the band. */
  public double schroederHz() {
    return Reverberation.schroederHz(
        volumeM3, Reverberation.sabineS(volumeM3, midAbsorptionAreaM2()));
  }

  /** Late level in dB of {@code octave} at an omnidirectional microphone; see {@link LateField}. */
  public double lateLevelDb(SoundPower power, Octave octave, int order) {
    return lateLevelDb(power, absorptionAreaM2.get(octave), order);
  }

  /** Late level in dB for a given absorption area, as {@link #midAbsorptionAreaM2()}. */
  public double lateLevelDb(SoundPower power, double areaM2, int order) {
    return LateField.levelDb(power.db(), areaM2, surfaceM2, order);
  }

  /** What makes the room's laws doubtful in {@code octaves}; empty when nothing does. */
  public List<Validity> validity(Octave... octaves) {
    List<Validity> found = new ArrayList<>();
    for (Octave octave : octaves) {
      if (meanAbsorption(octave) > SABINE_LIMIT) {
        found.add(
            new Validity(
                "sabine-above-0.2",
                String.format(
                    Locale.ROOT,
                    "mean absorption %.2f at %s is above 0.2: Sabine overstates the decay",
                    meanAbsorption(octave),
                    octave.words())));
      }
      if (octave.midHz() < schroederHz()) {
        found.add(
            new Validity(
                "below-schroeder",
                String.format(
                    Locale.ROOT,
                    "%s lies below the Schroeder frequency of %.0f Hz: single modes rule there",
                    octave.words(),
                    schroederHz())));
      }
    }
    found.addAll(shapeValidity());
    return List.copyOf(found);
  }

  /** Long or flat rooms do not mix: a side over six times another (from memory of Kang's work). */
  private List<Validity> shapeValidity() {
    double longestM = Math.max(box.lengthM(), Math.max(box.widthM(), box.heightM()));
    double shortestM = Math.min(box.lengthM(), Math.min(box.widthM(), box.heightM()));
    return longestM > LONGEST_OVER_SHORTEST * shortestM
        ? List.of(
            new Validity(
                "not-a-mixing-room",
                "one side is more than six times another: the field is not diffuse"))
        : List.of();
  }

  private double airAreaM2(Octave octave) {
    return 4 * air.energyAttenuationPerM(octave.midHz()) * volumeM3;
  }
}
