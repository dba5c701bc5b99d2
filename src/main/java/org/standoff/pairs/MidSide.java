package org.standoff.pairs;

import org.standoff.acoustics.Polar;

/**
 * The matrix L, R = M ± s·S with the side figure-8's front to the left, and the pair of equal
 * capsules that it amounts to: total angle 2 atan(s/Bm), omni part Am/(Am + √(Bm² + s²)). Derived;
 * Dooley and Streicher, Journal of the AES 30 (1982), give the same trigonometry.
 *
 * @param sideGain s ≥ 0, amplitude of the side signal with the mid signal at 1
 */
public record MidSide(double sideGain) {
  public MidSide {
    if (!(sideGain >= 0 && Double.isFinite(sideGain))) {
      throw new IllegalArgumentException("the side gain must be 0 or more, not " + sideGain);
    }
  }

  /** Angle between the axes of the equivalent pair in degrees, 0 to 180. */
  public double equivalentAngleDeg(Polar mid) {
    return 2 * Math.toDegrees(Math.atan2(sideGain, mid.gradientPart()));
  }

  /** Pattern of each capsule of the equivalent pair, 1 on its axis. */
  public Polar equivalentPattern(Polar mid) {
    return Polar.firstOrder(mid.omniPart() / equivalentGain(mid));
  }

  /** Amplitude of the matrix's left channel on the axis of its equivalent capsule, above 0. */
  public double equivalentGain(Polar mid) {
    return mid.omniPart() + Math.hypot(mid.gradientPart(), sideGain);
  }
}
