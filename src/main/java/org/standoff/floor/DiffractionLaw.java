package org.standoff.floor;

import org.standoff.acoustics.Level;

/**
 * Published laws for the loss of sound that bends over one edge, in free field, by Fresnel number N
 * = 2δ/λ; N is negative where the straight line clears the edge.
 */
public enum DiffractionLaw {
  /**
   * Kurze and Anderson, Applied Acoustics 4 (1971) 35: 5 + 20 lg(x/tanh x), x = √(2πN); for N &lt;
   * 0 the tangent in place of its hyperbolic cousin, down to 0 dB at about N = −0.19. Without its
   * cap.
   */
  KURZE_ANDERSON("kurze-anderson-1971") {
    @Override
    public double lossDb(double fresnelNumber, double thicknessInWavelengths) {
      return -Level.ofPowerRatio(kurzeAndersonEnergy(fresnelNumber));
    }
  },
  /**
   * ISO 9613-2:1996, clause 7.4, without ground reflections: 10 lg(3 + 20 N C3), at most 20 dB over
   * a thin screen and 25 dB over a thick one; 0 where the line clears the edge. A thin screen's
   * uncapped value is the usual fit to Maekawa's chart.
   */
  ISO_9613_2("iso-9613-2") {
    @Override
    public double lossDb(double fresnelNumber, double thicknessInWavelengths) {
      if (fresnelNumber < 0) {
        return 0;
      }
      double db =
          Level.ofPowerRatio(3 + 20 * fresnelNumber * secondEdgeFactor(thicknessInWavelengths));
      return Math.min(db, thicknessInWavelengths > 0 ? DOUBLE_EDGE_LIMIT_DB : SINGLE_EDGE_LIMIT_DB);
    }
  };

  /** No more than this over one edge (ISO 9613-2:1996, clause 7.4). */
  public static final double SINGLE_EDGE_LIMIT_DB = 20;

  /** No more than this over two edges (ISO 9613-2:1996, clause 7.4). */
  public static final double DOUBLE_EDGE_LIMIT_DB = 25;

  private static final double AT_THE_EDGE = Level.powerRatio(-5);
  private static final double STRAIGHT_BELOW = 1e-12;

  private final String id;

  DiffractionLaw(String id) {
    this.id = id;
  }

  /** The name in answers. */
  public String id() {
    return id;
  }

  /**
   * Loss in dB, ≥ 0.
   *
   * @param thicknessInWavelengths of the screen, e/λ ≥ 0; laws for thin screens don't ask
   */
  public abstract double lossDb(double fresnelNumber, double thicknessInWavelengths);

  /** C3 = (1 + (5λ/e)²)/(1/3 + (5λ/e)²) of ISO 9613-2, in [1, 3); 1 for a thin screen. */
  public static double secondEdgeFactor(double thicknessInWavelengths) {
    double inverse = thicknessInWavelengths / 5 * (thicknessInWavelengths / 5);
    return (inverse + 1) / (inverse / 3 + 1);
  }

  /** The share of energy that passes the edge by {@link #KURZE_ANDERSON}, in (0, 1], uncapped. */
  static double kurzeAndersonEnergy(double fresnelNumber) {
    double xx = 2 * Math.PI * Math.abs(fresnelNumber);
    if (xx < STRAIGHT_BELOW) {
      return AT_THE_EDGE;
    }
    double x = Math.sqrt(xx);
    if (fresnelNumber > 0) {
      double fall = Math.exp(-2 * x);
      double tanh = (1 - fall) / (1 + fall);
      return AT_THE_EDGE * tanh * tanh / xx;
    }
    double tan = x < Math.PI / 2 ? Math.tan(x) : Double.POSITIVE_INFINITY;
    return Math.min(AT_THE_EDGE * tan * tan / xx, 1);
  }
}
