package org.standoff.acoustics;

import java.util.OptionalDouble;

/**
 * A first-order pattern p(θ) = A + B cos θ with A + B = 1, rotationally symmetric, for a plane
 * wave.
 *
 * <p>Real patterns hold to it within about 2 dB from 200 Hz to 4 kHz (common practice). All figures
 * are derived from the formula; Eargle, The Microphone Book, tables 5-1 and 6-1, has the same.
 *
 * @param omniPart A, in [0, 1]
 * @param halfSpace true for a boundary microphone: the surface that it lies in stands between it
 *     and one half of all directions, so its share of a diffuse field halves. Sources are always on
 *     the open side, so {@link #pressure} does not ask
 */
public record Polar(double omniPart, boolean halfSpace) {
  /**
   * How deep a null is taken to be in a real room, in dB: 15 to 25 dB is what real capsules keep in
   * the middle of the band (common practice).
   */
  public static final double DEFAULT_REJECTION_CAP_DB = 20;

  public Polar {
    if (!(omniPart >= 0 && omniPart <= 1)) {
      throw new IllegalArgumentException("the omni part must be from 0 to 1, not " + omniPart);
    }
  }

  /** A free-standing pattern with omni part {@code a} in [0, 1]. */
  public static Polar firstOrder(double a) {
    return new Polar(a, false);
  }

  /** B = 1 − A. */
  public double gradientPart() {
    return 1 - omniPart;
  }

  /**
   * A + B cos θ, in [A − B, 1]; negative where the pattern's rear lobe turns the polarity over.
   *
   * @param cosTheta cosine of the angle off axis, in [−1, 1]
   */
  public double pressure(double cosTheta) {
    return omniPart + gradientPart() * cosTheta;
  }

  /** 20 lg |A + B cos θ| in dB re the axis, at most 0; −∞ in a null (within rounding). */
  public double levelDb(double angleDeg) {
    return Level.ofAmplitudeRatio(Math.abs(pressure(Math.cos(Math.toRadians(angleDeg)))));
  }

  /**
   * As {@link #levelDb}, but never below −{@code rejectionCapDb}: nulls of real capsules fill up.
   *
   * @param rejectionCapDb ≥ 0, as a rule {@link #DEFAULT_REJECTION_CAP_DB}
   */
  public double levelDbCapped(double angleDeg, double rejectionCapDb) {
    return Math.max(levelDb(angleDeg), -rejectionCapDb);
  }

  /**
   * REE = A² + B²/3, the share of a diffuse field that is heard, in [1/4, 1]; half on a boundary.
   */
  public double randomEnergyEfficiency() {
    return halfSpace ? sphereMean() / 2 : sphereMean();
  }

  /** DI = −10 lg REE in dB, ≥ 0. */
  public double directivityIndexDb() {
    return -Level.ofPowerRatio(randomEnergyEfficiency());
  }

  /** Q = 1/REE, ≥ 1. */
  public double directivityFactor() {
    return 1 / randomEnergyEfficiency();
  }

  /** √(1/REE): how many times farther than an omni for the same share of room. */
  public double distanceFactor() {
    return Math.sqrt(directivityFactor());
  }

  /**
   * Whole angle of the front lobe within {@code downDb} of the axis, 2 acos((10^(−x/20) − A)/B);
   * empty where the pattern never falls that far.
   *
   * @param downDb ≥ 0
   */
  public OptionalDouble totalPickupAngleDeg(double downDb) {
    if (!(downDb >= 0)) {
      throw new IllegalArgumentException("a fall from the axis is 0 dB or more, not " + downDb);
    }
    OptionalDouble half = angleOfPressureDeg(Level.amplitudeRatio(-downDb));
    return half.isPresent() ? OptionalDouble.of(2 * half.getAsDouble()) : half;
  }

  /** Angle off axis of the null, acos(−A/B), in [90, 180]; empty for A > B. */
  public OptionalDouble nullAngleDeg() {
    return angleOfPressureDeg(0);
  }

  /** Share of the diffuse energy heard that comes from the front half, (A² + AB + B²/3)/(2 REE). */
  public double frontShare() {
    return (sphereMean() + omniPart * gradientPart()) / (2 * sphereMean());
  }

  /** 10 lg(F/(1 − F)) in dB with F = {@link #frontShare()}: front over rear in a diffuse field. */
  public double unidirectionalIndexDb() {
    return Level.ofPowerRatio(frontShare() / (1 - frontShare()));
  }

  private double sphereMean() {
    return omniPart * omniPart + gradientPart() * gradientPart() / 3;
  }

  private OptionalDouble angleOfPressureDeg(double pressure) {
    if (gradientPart() == 0) {
      return OptionalDouble.empty();
    }
    double cosTheta = (pressure - omniPart) / gradientPart();
    return cosTheta < -1
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.toDegrees(Math.acos(cosTheta)));
  }
}
