package org.standoff.pairs;

/**
 * Spherical Bessel functions of the first kind, DLMF 10.49(i); near 0 their power series, DLMF
 * 10.53.1, where the closed forms cancel. Exact within 1e-11.
 */
final class SphericalBessel {
  private static final double SMALL = 0.1;

  private SphericalBessel() {}

  /** sin x/x; 1 at 0. */
  static double j0(double x) {
    double s = x * x;
    return Math.abs(x) < SMALL ? 1 - s / 6 * (1 - s / 20 * (1 - s / 42)) : Math.sin(x) / x;
  }

  /** sin x/x² − cos x/x; 0 at 0, odd. */
  static double j1(double x) {
    double s = x * x;
    return Math.abs(x) < SMALL
        ? x / 3 * (1 - s / 10 * (1 - s / 28 * (1 - s / 54)))
        : Math.sin(x) / s - Math.cos(x) / x;
  }

  /** (3/x³ − 1/x) sin x − 3 cos x/x²; 0 at 0. */
  static double j2(double x) {
    double s = x * x;
    return Math.abs(x) < SMALL
        ? s / 15 * (1 - s / 14 * (1 - s / 36 * (1 - s / 66)))
        : (3 / s - 1) * Math.sin(x) / x - 3 * Math.cos(x) / s;
  }
}
