package org.standoff.acoustics;

/** The standard normal distribution by published rational approximations. */
@SuppressWarnings("FloatingPointLiteralPrecision") // digits as printed, to compare with the paper
final class Normal {
  // Coefficients of AS 241, highest power first, in the paper's order of letters.
  private static final double[] A = {
    2509.0809287301226727,
    33430.575583588128105,
    67265.770927008700853,
    45921.953931549871457,
    13731.693765509461125,
    1971.5909503065514427,
    133.14166789178437745,
    3.3871328727963666080
  };
  private static final double[] B = {
    5226.4952788528545610,
    28729.085735721942674,
    39307.895800092710610,
    21213.794301586595867,
    5394.1960214247511077,
    687.18700749205790830,
    42.313330701600911252,
    1
  };
  private static final double[] C = {
    7.74545014278341407640e-4,
    2.27238449892691845833e-2,
    2.41780725177450611770e-1,
    1.27045825245236838258,
    3.64784832476320460504,
    5.76949722146069140550,
    4.63033784615654529590,
    1.42343711074968357734
  };
  private static final double[] D = {
    1.05075007164441684324e-9,
    5.47593808499534494600e-4,
    1.51986665636164571966e-2,
    1.48103976427480074590e-1,
    6.89767334985100004550e-1,
    1.67638483018380384940,
    2.05319162663775882187,
    1
  };
  private static final double[] E = {
    2.01033439929228813265e-7,
    2.71155556874348757815e-5,
    1.24266094738807843860e-3,
    2.65321895265761230930e-2,
    2.96560571828504891230e-1,
    1.78482653991729133580,
    5.46378491116411436990,
    6.65790464350110377720
  };
  private static final double[] F = {
    2.04426310338993978564e-15,
    1.42151175831644588870e-7,
    1.84631831751005468180e-5,
    7.86869131145613259100e-4,
    1.48753612908506148525e-2,
    1.36929880922735805310e-1,
    5.99832206555887937690e-1,
    1
  };
  // Coefficients of Hart's algorithm 5666, highest power first.
  private static final double[] HART_P = {
    3.52624965998911e-2,
    0.700383064443688,
    6.37396220353165,
    33.912866078383,
    112.079291497871,
    221.213596169931,
    220.206867912376
  };
  private static final double[] HART_Q = {
    8.83883476483184e-2,
    1.75566716318264,
    16.064177579207,
    86.7807322029461,
    296.564248779674,
    637.333633378831,
    793.826512519948,
    440.413735824752
  };
  private static final double HART_LIMIT = 7.07106781186547;

  private Normal() {}

  /**
   * The inverse of {@link #cumulative}: M. J. Wichura, Algorithm AS 241 (PPND16), Applied
   * Statistics 37 (1988) 477; relative accuracy about 1e-16.
   *
   * @param p in (0, 1); 0 gives −∞, 1 gives +∞, anything else NaN
   */
  static double quantile(double p) {
    if (!(p > 0 && p < 1)) {
      return p == 0 ? Double.NEGATIVE_INFINITY : p == 1 ? Double.POSITIVE_INFINITY : Double.NaN;
    }
    double q = p - 0.5;
    if (Math.abs(q) <= 0.425) {
      double r = 0.180625 - q * q;
      return q * polynomial(A, r) / polynomial(B, r);
    }
    double r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
    double tail =
        r <= 5
            ? polynomial(C, r - 1.6) / polynomial(D, r - 1.6)
            : polynomial(E, r - 5) / polynomial(F, r - 5);
    return Math.copySign(tail, q);
  }

  /**
   * Probability that a standard normal figure is at most {@code x}: Hart's algorithm 5666 (Computer
   * Approximations, 1968) with the continued fraction of G. West, "Better approximations to
   * cumulative normal functions", Wilmott 2005; relative accuracy about 1e-13 in the lower tail.
   */
  static double cumulative(double x) {
    double upper = upperTail(Math.abs(x));
    return x > 0 ? 1 - upper : upper;
  }

  private static double upperTail(double x) {
    double bell = Math.exp(-x * x / 2);
    if (x < HART_LIMIT) {
      return bell * polynomial(HART_P, x) / polynomial(HART_Q, x);
    }
    double fraction = x + 0.65;
    for (int term = 4; term >= 1; term--) {
      fraction = x + term / fraction;
    }
    return bell / fraction / Math.sqrt(2 * Math.PI);
  }

  private static double polynomial(double[] highestFirst, double x) {
    double value = 0;
    for (double coefficient : highestFirst) {
      value = value * x + coefficient;
    }
    return value;
  }
}
