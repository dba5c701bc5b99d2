package org.standoff.floor;

import java.util.Optional;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;

/**
 * What one barrier keeps from the direct way between two places, in free field. In a room
 * reflections and the late field go on as ever and bound the benefit.
 *
 * @param overTopM detour δ = A + B − d over the top edge, negative where the straight line clears
 *     it
 * @param aroundLeftM the same around one side
 * @param aroundRightM the same around the other
 * @param sightLineLost whether the panel stands in the straight line
 * @param lossDb insertion loss per octave by {@link DiffractionLaw#KURZE_ANDERSON} on each edge, at
 *     most {@link DiffractionLaw#SINGLE_EDGE_LIMIT_DB} there, and through the panel; what bleed
 *     uses
 * @param isoLossDb the same by {@link DiffractionLaw#ISO_9613_2}, to show how far laws differ
 */
public record BarrierLoss(
    double overTopM,
    double aroundLeftM,
    double aroundRightM,
    boolean sightLineLost,
    Octaves lossDb,
    Octaves isoLossDb) {

  /**
   * The loss between two places; empty when both are on one side of the panel.
   *
   * @param speedMPerS speed of sound
   */
  public static Optional<BarrierLoss> between(
      PlacedBarrier placed, Point3 from, Point3 to, double speedMPerS) {
    Screen screen = new Screen(placed, speedMPerS);
    double[] detourM = new double[Screen.EDGES];
    if (!screen.between(from, to, detourM)) {
      return Optional.empty();
    }
    double[] passed = Octaves.filled(1).toArray();
    screen.pass(from, to, passed);
    boolean lost = Screen.blocked(detourM);
    return Optional.of(
        new BarrierLoss(
            detourM[0],
            detourM[1],
            detourM[2],
            lost,
            Octaves.of(passed).map(share -> -Level.ofPowerRatio(share)),
            isoDb(placed.barrier(), detourM, lost, speedMPerS)));
  }

  /** N = 2δf/c. */
  public static double fresnelNumber(double detourM, double hz, double speedMPerS) {
    return 2 * detourM * hz / speedMPerS;
  }

  /**
   * Energy sum of what bends over the edges and what goes through, −10 lg(Σ 10^(−ILᵢ/10) +
   * 10^(−TL/10)), no lower than 0 dB.
   *
   * @param transmissionLossDb TL ≥ 0; ∞ where nothing goes through
   */
  public static double combinedDb(double transmissionLossDb, double... edgesDb) {
    double passed = Level.powerRatio(-transmissionLossDb);
    for (double edge : edgesDb) {
      passed += Level.powerRatio(-edge);
    }
    return -Level.ofPowerRatio(Math.min(passed, 1));
  }

  private static Octaves isoDb(Barrier barrier, double[] detourM, boolean lost, double speedMPerS) {
    double[] loss = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      double thickness = barrier.thicknessM() * octave.midHz() / speedMPerS;
      double[] edges = new double[Screen.EDGES];
      for (int i = 0; i < edges.length; i++) {
        double number = fresnelNumber(detourM[i], octave.midHz(), speedMPerS);
        edges[i] = DiffractionLaw.ISO_9613_2.lossDb(number, thickness);
      }
      double through = lost ? barrier.transmissionLossDb().get(octave) : Double.POSITIVE_INFINITY;
      loss[octave.ordinal()] = combinedDb(through, edges);
    }
    return Octaves.of(loss);
  }
}
