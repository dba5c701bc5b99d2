package org.standoff.chain;

import org.standoff.acoustics.Level;

/**
 * Thermal noise of a resistance, U = √(4·k·T·R·B) (Johnson and Nyquist 1928), open circuit, in the
 * band of 20 kHz and at 293.15 K, the conditions of a preamp's data sheet.
 */
public final class ThermalNoise {
  /** Boltzmann's constant, J/K, exact in the SI of 2019. */
  private static final double BOLTZMANN = 1.380649e-23;

  private static final double TEMPERATURE_K = 293.15;
  private static final double BANDWIDTH_HZ = 20_000;

  private ThermalNoise() {}

  /** Rms voltage over the audio band, in V; 0 for 0 ohm. */
  public static double volts(double ohm) {
    return Math.sqrt(4 * BOLTZMANN * TEMPERATURE_K * ohm * BANDWIDTH_HZ);
  }

  /** The same as a level, in dBu; −∞ for 0 ohm. */
  public static double dbu(double ohm) {
    return Level.ofAmplitudeRatio(volts(ohm) / Volts.DBU_REFERENCE_V);
  }

  /** Density, in V/√Hz. */
  public static double voltsPerRootHz(double ohm) {
    return volts(ohm) / Math.sqrt(BANDWIDTH_HZ);
  }
}
