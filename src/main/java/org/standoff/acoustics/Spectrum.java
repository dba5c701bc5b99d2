package org.standoff.acoustics;

/**
 * How the radiated power of a placement divides over the octaves.
 *
 * @param lowestHz lowest frequency that the source puts out there, in Hz
 * @param highestHz highest frequency, in Hz
 * @param powerShares share of each octave in the radiated power; they sum to 1
 */
public record Spectrum(double lowestHz, double highestHz, Octaves powerShares) {

  /** The spectrum of a named class, limited to the octaves that overlap the source's range. */
  public static Spectrum of(SpectrumClass spectrumClass, double lowestHz, double highestHz) {
    return new Spectrum(
        lowestHz, highestHz, Octaves.of(spectrumClass.weights(lowestHz, highestHz)));
  }

  /**
   * Shares of the octave energies of the pressure on the axis: w·Q, normalised to a sum of 1.
   *
   * @param directivity the source's directivity at this placement
   */
  public Octaves onAxisShares(Directivity directivity) {
    double[] shares = new double[Octave.COUNT];
    double sum = 0;
    for (Octave octave : Octave.all()) {
      int i = octave.ordinal();
      shares[i] = powerShares.get(octave) * directivity.factor(octave.midHz());
      sum += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return Octaves.of(shares);
  }

  /** The spectrum's directivity factor: mean of Q over the octaves, weighted by their power. */
  public double meanDirectivityFactor(Directivity directivity) {
    double sum = 0;
    for (Octave octave : Octave.all()) {
      sum += powerShares.get(octave) * directivity.factor(octave.midHz());
    }
    return sum;
  }
}
