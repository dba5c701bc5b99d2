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
    return ofLevels(spectrumClass.powerDb(), lowestHz, highestHz);
  }

  /**
   * The spectrum of octave levels of radiated power, limited to the octaves that overlap the
   * source's range.
   *
   * @param powerDb level of each octave in dB re anything common to all
   * @throws IllegalArgumentException when no octave overlaps the range
   */
  public static Spectrum ofLevels(Octaves powerDb, double lowestHz, double highestHz) {
    double[] shares = new double[Octave.COUNT];
    double sum = 0;
    for (Octave octave : Octave.all()) {
      if (octave.lowerHz() < highestHz && octave.upperHz() > lowestHz) {
        shares[octave.ordinal()] = Level.powerRatio(powerDb.get(octave));
        sum += shares[octave.ordinal()];
      }
    }
    if (!(lowestHz <= highestHz) || sum == 0) {
      throw new IllegalArgumentException(
          "no octave lies between " + lowestHz + " and " + highestHz + " Hz");
    }
    double whole = sum;
    return new Spectrum(lowestHz, highestHz, Octaves.of(shares).map(share -> share / whole));
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
