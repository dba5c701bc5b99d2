package org.standoff.acoustics;

/**
 * The rise of a directional microphone's output near a source, against its response to a plane wave
 * of the same pressure. Follows from Euler's equation for a spherical wave (Olson, Acoustical
 * Engineering; Eargle, The Microphone Book).
 *
 * <p>Near a null the rise would be told against next to nothing. Real nulls fill up, so the
 * pressure part is taken no lower than {@link Polar#DEFAULT_REJECTION_CAP_DB} under the axis: the
 * rise stays finite, and added to {@link Polar#levelDbCapped} it gives the output. Away from nulls
 * the formula is untouched.
 */
public final class Proximity {
  private static final double LEAST_PRESSURE =
      Level.amplitudeRatio(-Polar.DEFAULT_REJECTION_CAP_DB);

  private Proximity() {}

  /**
   * Point source: 20 lg(√((A + Bc)² + (Bc/(kr))²)/|A + Bc|) with c = cos θ, in dB, ≥ 0; 0 for an
   * omni and at 90°.
   *
   * @param distanceM r > 0 from the acoustic centre; ∞ gives 0
   * @param hz frequency above 0
   */
  public static double riseDb(
      Polar pattern, double cosTheta, double distanceM, double hz, double speedMPerS) {
    double gradient = pattern.gradientPart() * cosTheta;
    double pressure = filled(pattern.pressure(cosTheta));
    double kr = 2 * Math.PI * hz / speedMPerS * distanceM;
    double quadrature = gradient / kr;
    return Level.ofPowerRatio(1 + quadrature * quadrature / (pressure * pressure));
  }

  /**
   * Baffled piston on its axis at low ka: |A + Bc g/p|/|A + Bc| in dB with the two-wave short form
   * g/p = 1/(jkR) + (1 + z/R)/2, R = √(z² + a²). Within 0.1 dB of the full solution to ka = 0.4,
   * 0.25 dB to 0.6 (derived). Above the rise it is slightly negative close to the head.
   *
   * @param radiusM a > 0
   * @param z distance from the surface, ≥ 0
   */
  public static double pistonDb(
      Polar pattern, double cosTheta, double radiusM, double z, double hz, double speedMPerS) {
    double gradient = pattern.gradientPart() * cosTheta;
    double rimM = Math.sqrt(z * z + radiusM * radiusM);
    double inPhase = filled(pattern.omniPart() + gradient * (1 + z / rimM) / 2);
    double quadrature = gradient / (2 * Math.PI * hz / speedMPerS * rimM);
    double pressure = filled(pattern.pressure(cosTheta));
    return Level.ofPowerRatio(
        (inPhase * inPhase + quadrature * quadrature) / (pressure * pressure));
  }

  /**
   * The frequency in Hz at which the rise on the axis of a point source reaches {@code riseDb}: kr
   * = B/√(10^(x/10) − 1); 0 for an omni, which never rises.
   *
   * @param riseDb above 0
   */
  public static double frequencyOfRiseHz(
      Polar pattern, double distanceM, double riseDb, double speedMPerS) {
    double kr = pattern.gradientPart() / Math.sqrt(Level.powerRatio(riseDb) - 1);
    return kr * speedMPerS / (2 * Math.PI * distanceM);
  }

  /**
   * The distance in m at which a point source has the rise of an incoherent disc, 1/r² = (1 −
   * z⁴/R⁴)/(2 z² ln(1 + a²/z²)), R² = z² + a² (derived: energies of pressure and gradient over the
   * disc).
   *
   * @param radiusM a > 0
   * @param z > 0
   */
  static double discDistanceM(double radiusM, double z) {
    double zz = z * z;
    double share = zz / (zz + radiusM * radiusM);
    return Math.sqrt(2 * zz * Math.log1p(radiusM * radiusM / zz) / ((1 - share) * (1 + share)));
  }

  private static double filled(double pressure) {
    return Math.max(Math.abs(pressure), LEAST_PRESSURE);
  }
}
