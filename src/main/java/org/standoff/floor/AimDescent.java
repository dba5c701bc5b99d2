package org.standoff.floor;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Walks down from a start by the method of Nelder and Mead (The Computer Journal 7 (1965) 308),
 * begun anew with a smaller simplex where it stopped. What is not allowed costs a penalty that
 * leads back; only allowed places are ever returned.
 */
final class AimDescent {
  /** Of the objective in dB: far finer than anybody hears. */
  private static final double PRECISION_DB = 1e-4;

  private static final double[] SIMPLEX_SHARES = {1, -0.4, 0.1};
  private static final int MOST_TRIES = 250;

  /** What is made small. */
  interface Objective {
    /** The unwanted level in dB. */
    double levelDb(double[] place);

    /** How far {@code place} is from being allowed, in dB of wanted sound; 0 or less is allowed. */
    double excessDb(double[] place);
  }

  private static final double PENALTY = 100;

  private final Objective objective;
  private double[] best;
  private double bestDb;

  /**
   * Starts at an allowed place.
   *
   * @param start may not be one that is not allowed, or nothing better is found
   */
  AimDescent(Objective objective, double[] start) {
    this.objective = objective;
    best = start.clone();
    bestDb = objective.excessDb(start) <= 0 ? objective.levelDb(start) : Double.POSITIVE_INFINITY;
  }

  /** Goes down with simplex sides of {@code sides} and smaller. */
  void walk(double[] sides) {
    for (double share : SIMPLEX_SHARES) {
      double[] scaled = new double[sides.length];
      for (int i = 0; i < sides.length; i++) {
        scaled[i] = sides[i] * share;
      }
      try {
        new SimplexOptimizer(0, PRECISION_DB)
            .optimize(
                new MaxEval(MOST_TRIES),
                new ObjectiveFunction(this::penalised),
                GoalType.MINIMIZE,
                new InitialGuess(best),
                new NelderMeadSimplex(scaled));
      } catch (MathIllegalStateException triesSpent) {
        // The best allowed place so far has been kept all along.
        continue;
      }
    }
  }

  double[] best() {
    return best.clone();
  }

  /** The level there; infinite when no allowed place was met. */
  double bestDb() {
    return bestDb;
  }

  private double penalised(double[] place) {
    double excess = objective.excessDb(place);
    double level = objective.levelDb(place);
    if (excess <= 0 && level < bestDb) {
      bestDb = level;
      best = place.clone();
    }
    return level + PENALTY * Math.max(excess, 0);
  }
}
