package org.standoff.pairs.listening;

import java.util.List;

/**
 * The combinations of level and time difference that put the image at the loudspeaker, as straight
 * lines between points; says nothing of images in between.
 *
 * <p>How far a combination drives the image is its length over the length at which a ray through it
 * from the origin meets the limit. Where level and time contradict each other the outermost lines
 * are drawn on; a combination that then meets neither side's limit stays in the middle. That part
 * is a convention (derived), not a finding of a study.
 *
 * @param limit from level alone (time 0) to time alone (level 0): level falling, time rising
 */
public record LimitPolyline(Study study, List<Corner> limit) implements ListeningModel {
  /**
   * A corner of the limit.
   *
   * @param levelDb ≥ 0
   * @param timeMs ≥ 0
   */
  public record Corner(double levelDb, double timeMs) {}

  /**
   * @throws IllegalArgumentException when the limit doesn't run from the level axis to the time
   *     axis with falling level and rising time
   */
  public LimitPolyline {
    limit = List.copyOf(limit);
    if (limit.size() < 2 || limit.get(0).timeMs != 0 || limit.get(limit.size() - 1).levelDb != 0) {
      throw new IllegalArgumentException("a limit runs from level alone to time alone");
    }
    for (int at = 1; at < limit.size(); at++) {
      Corner from = limit.get(at - 1);
      Corner to = limit.get(at);
      if (!(to.levelDb < from.levelDb && to.timeMs > from.timeMs)
          || !Double.isFinite(from.levelDb + to.timeMs)) {
        throw new IllegalArgumentException(
            "along a limit level falls and time rises; " + from + " to " + to + " doesn't");
      }
    }
  }

  @Override
  public boolean placesImages() {
    return false;
  }

  @Override
  public double sidewaysPct(double levelDb, double timeMs) {
    double left = Math.max(share(levelDb, timeMs), 0);
    double right = Math.max(share(-levelDb, -timeMs), 0);
    return SIDE_PCT * (left - right);
  }

  /** Share of the left limit that is reached; negative on the far side of the middle. */
  private double share(double levelDb, double timeMs) {
    if (levelDb <= 0 && timeMs <= 0) {
      return 0;
    }
    int at = 1;
    while (at < limit.size() - 1 && passes(limit.get(at), levelDb, timeMs)) {
      at++;
    }
    return alongLine(limit.get(at - 1), limit.get(at), levelDb, timeMs);
  }

  /** Whether the ray lies on the time side of the corner. */
  private static boolean passes(Corner corner, double levelDb, double timeMs) {
    return timeMs * corner.levelDb > levelDb * corner.timeMs;
  }

  /** Value at a place of the linear function that is 0 in the origin and 1 on the line. */
  private static double alongLine(Corner from, Corner to, double levelDb, double timeMs) {
    double cross = from.levelDb * to.timeMs - to.levelDb * from.timeMs;
    return (levelDb * (to.timeMs - from.timeMs) + timeMs * (from.levelDb - to.levelDb)) / cross;
  }
}
