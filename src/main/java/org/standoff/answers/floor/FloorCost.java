package org.standoff.answers.floor;

import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Octave;
import org.standoff.floor.FloorPlan;

/**
 * CPU time that floors take, estimated from their sizes before anything is computed. What each part
 * takes was measured at the largest questions over HTTP, with what it takes to write the answer.
 */
final class FloorCost {
  /** Arrivals that are weighed for remedies nobody asked for by name: a second and a half. */
  static final long MOST_UNASKED_ARRIVALS = 25_000;

  /** A search that also moves the microphone weighs about that many places. */
  private static final int PLACES_IN_REACH = 100;

  /** Order of reflections where the question does not say. */
  static final int USUAL_ORDER = 1;

  private static final double MS_PER_OCTAVE_PATH = 3e-5;

  /** A barrier beside one path. */
  private static final double MS_PER_BARRIER = 0.9e-3;

  private static final double MS_PER_CELL = 0.03;
  private static final double MS_PER_CELL_IN_OCTAVES = 0.17;
  private static final double MS_PER_UNTOLD_CELL = 0.006;

  /** An arrival, weighed over all aims. */
  private static final double MS_PER_AIM_ARRIVAL = 0.06;

  /** A source, at a seat, in a part of the day. */
  private static final double MS_PER_EXPOSURE = 0.0004;

  private FloorCost() {}

  static int order(@Nullable Integer asked, ResolvedFloor floor) {
    if (asked == null) {
      floor.assumptions().add("reflections are computed up to order %d", USUAL_ORDER);
      return USUAL_ORDER;
    }
    return asked;
  }

  /** Of a matrix that is told cell by cell, in ms. */
  static double bleedMs(FloorPlan plan, int order, boolean octaves) {
    return matrixMs(plan, order) + cells(plan) * (octaves ? MS_PER_CELL_IN_OCTAVES : MS_PER_CELL);
  }

  /** Of searches for aims on a floor, in ms. */
  static double aimsMs(FloorPlan plan, int order, long arrivals) {
    return untoldMs(plan, order) + arrivalsMs(arrivals);
  }

  /** Of arrivals that are weighed over all aims, in ms. */
  static double arrivalsMs(long arrivals) {
    return arrivals * MS_PER_AIM_ARRIVAL;
  }

  /** Of a day of so many parts at the seats of a floor, in ms. */
  static double exposureMs(FloorPlan heard, int order, int parts) {
    return untoldMs(heard, order) + cells(heard) * parts * MS_PER_EXPOSURE;
  }

  /** Arrivals to be weighed over all directions by one search. */
  static long aimArrivals(FloorPlan plan, int order, int patterns, int places, boolean moves) {
    long perSearch = plan.with(plan.microphones().subList(0, 1)).octavePaths(order) / Octave.COUNT;
    return perSearch * patterns * (1L + places) * (moves ? PLACES_IN_REACH : 1);
  }

  private static double untoldMs(FloorPlan plan, int order) {
    return matrixMs(plan, order) + cells(plan) * MS_PER_UNTOLD_CELL;
  }

  private static double matrixMs(FloorPlan plan, int order) {
    return plan.octavePaths(order) * MS_PER_OCTAVE_PATH
        + cells(plan) * plan.barriers().size() * MS_PER_BARRIER;
  }

  private static double cells(FloorPlan plan) {
    return (double) plan.microphones().size() * plan.sources().size();
  }
}
