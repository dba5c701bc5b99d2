package org.standoff.floor;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Point3;

/**
 * A placed barrier as direct sound meets it: it bends over the top and round both sides and goes
 * through the panel, and these four parts add as energy. No part of the field behind is shielded
 * twice: reflections and the late field reach the microphone as ever and bound the benefit.
 */
final class Screen {
  /** Top, left and right edge. */
  static final int EDGES = 3;

  private static final double MOST_LOSS = Level.powerRatio(-DiffractionLaw.SINGLE_EDGE_LIMIT_DB);

  private final PlacedBarrier placed;
  private final double normalX;
  private final double normalY;
  private final double halfWidthM;
  private final double heightM;
  private final double[] transmitted = new double[Octave.COUNT];
  private final double[] fresnelPerM = new double[Octave.COUNT];

  Screen(PlacedBarrier placed, double speedMPerS) {
    this.placed = placed;
    Direction normal = placed.normal();
    normalX = normal.x();
    normalY = normal.y();
    halfWidthM = placed.barrier().widthM() / 2;
    heightM = placed.barrier().heightM();
    for (Octave octave : Octave.all()) {
      transmitted[octave.ordinal()] =
          Level.powerRatio(-placed.barrier().transmissionLossDb().get(octave));
      fresnelPerM[octave.ordinal()] = BarrierLoss.fresnelNumber(1, octave.midHz(), speedMPerS);
    }
  }

  /** Multiplies energies of the direct path from {@code from} to {@code to} by what passes. */
  void pass(Point3 from, Point3 to, double[] energy) {
    double[] detourM = new double[EDGES];
    if (!between(from, to, detourM)) {
      return;
    }
    boolean blocked = blocked(detourM);
    for (int i = 0; i < energy.length; i++) {
      double passed = blocked ? transmitted[i] : 0;
      for (double detour : detourM) {
        passed += Math.max(DiffractionLaw.kurzeAndersonEnergy(detour * fresnelPerM[i]), MOST_LOSS);
      }
      energy[i] *= Math.min(passed, 1);
    }
  }

  /** Whether the straight line meets the panel. */
  static boolean blocked(double[] detourM) {
    return detourM[0] >= 0 && detourM[1] >= 0 && detourM[2] >= 0;
  }

  /**
   * Whether the places lie on different sides of the panel's plane; if so, the signed detour δ = A
   * + B − d over each edge, negative where the straight line clears it.
   */
  boolean between(Point3 from, Point3 to, double[] detourM) {
    double fromX = from.xM() - placed.xM();
    double fromY = from.yM() - placed.yM();
    double toX = to.xM() - placed.xM();
    double toY = to.yM() - placed.yM();
    double before = fromX * normalX + fromY * normalY;
    double behind = toX * normalX + toY * normalY;
    if (before * behind >= 0) {
      return false;
    }
    // Along the panel, positive to the right of somebody who looks where the face does.
    double fromU = fromX * normalY - fromY * normalX;
    double toU = toX * normalY - toY * normalX;
    double share = before / (before - behind);
    double crossingU = fromU + share * (toU - fromU);
    double crossingZ = from.zM() + share * (to.zM() - from.zM());
    double straightM = from.distanceToM(to);
    detourM[0] =
        Math.copySign(
            bentM(before, from.zM() - heightM, fromU, behind, to.zM() - heightM, toU, true)
                - straightM,
            heightM - crossingZ);
    detourM[1] =
        Math.copySign(
            bentM(before, fromU + halfWidthM, from.zM(), behind, toU + halfWidthM, to.zM(), false)
                - straightM,
            crossingU + halfWidthM);
    detourM[2] =
        Math.copySign(
            bentM(before, fromU - halfWidthM, from.zM(), behind, toU - halfWidthM, to.zM(), false)
                - straightM,
            halfWidthM - crossingU);
    return true;
  }

  /**
   * Shortest way over an edge. Each end is told by its distance to the panel's plane, its distance
   * to the edge in that plane, and its place along the edge; the way can't leave the edge's ends.
   */
  private double bentM(
      double before,
      double fromEdge,
      double fromAlong,
      double behind,
      double toEdge,
      double toAlong,
      boolean top) {
    double a = Math.sqrt(before * before + fromEdge * fromEdge);
    double b = Math.sqrt(behind * behind + toEdge * toEdge);
    double along = (fromAlong * b + toAlong * a) / (a + b);
    double least = top ? -halfWidthM : 0;
    double most = top ? halfWidthM : heightM;
    double over = Math.min(Math.max(along, least), most);
    double fromGap = fromAlong - over;
    double toGap = toAlong - over;
    return Math.sqrt(a * a + fromGap * fromGap) + Math.sqrt(b * b + toGap * toGap);
  }
}
