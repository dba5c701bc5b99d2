package org.standoff.answers.floor;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Octave;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.floor.FloorPlan;

/** What a floor costs, told before anything is computed, and refused where it is too much. */
final class FloorCost {
  /** Octave paths of one matrix: about a second on one core. */
  static final long MOST_OCTAVE_PATHS = 20_000_000;

  /** Arrivals that aim searches weigh over all directions: some seconds on one core. */
  static final long MOST_AIM_ARRIVALS = 25_000;

  /** A search that also moves the microphone weighs about that many places. */
  private static final int PLACES_IN_REACH = 12;

  /** Order of reflections where the question does not say. */
  static final int USUAL_ORDER = 1;

  private FloorCost() {}

  static int order(@Nullable Integer asked, ResolvedFloor floor) {
    if (asked == null) {
      floor.assumptions().add("reflections are computed up to order %d", USUAL_ORDER);
      return USUAL_ORDER;
    }
    return asked;
  }

  /**
   * Refuses a matrix that costs too much.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with the estimate
   */
  static void refuseMatrix(References references, FloorPlan plan, int order) {
    refuse(references, plan.octavePaths(order), MOST_OCTAVE_PATHS, "octave paths");
  }

  /** Arrivals to be weighed over all directions by one search. */
  static long aimArrivals(FloorPlan plan, int order, int patterns, int places, boolean moves) {
    long paths = plan.with(plan.microphones().subList(0, 1)).octavePaths(order);
    long perSearch = paths / Octave.COUNT;
    return perSearch * patterns * (1L + places) * (moves ? PLACES_IN_REACH : 1);
  }

  /**
   * Refuses searches that cost too much.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with the estimate
   */
  static void refuseAims(References references, long arrivals) {
    refuse(references, arrivals, MOST_AIM_ARRIVALS, "arrivals to weigh over all aims");
  }

  private static void refuse(References references, long estimate, long most, String unit) {
    if (estimate > most) {
      references.fault(
          QuestionFault.of(
                  AskedFloor.POINTER + "/microphones",
                  QuestionFault.Kind.OUT_OF_RANGE,
                  String.format(
                      Locale.ROOT,
                      "This costs about %d %s; ask for a lower order, or for fewer microphones,"
                          + " sources or places.",
                      estimate,
                      unit))
              .found(estimate)
              .allowed("at most " + most + " " + unit));
      references.refuseFaulty();
    }
  }
}
