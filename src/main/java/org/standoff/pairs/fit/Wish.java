package org.standoff.pairs.fit;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the pair is to do.
 *
 * @param fillPct share of the base that the players fill: half the way from the rightmost to the
 *     leftmost image, above 0 and at most 100
 * @param fillWithinPct how far off it may be where nothing is left to turn, ≥ 0
 * @param monoLossAtMostDb most that any player may lose in any octave when folded to mono, ≥ 0
 * @param directToReverberant how much room; needs a room in the question
 */
public record Wish(
    double fillPct,
    double fillWithinPct,
    OptionalDouble monoLossAtMostDb,
    Optional<Window> directToReverberant) {
  /** A miss that no listener notices, in per cent of the half base: half a per cent. */
  public static final double USUAL_WITHIN_PCT = 0.5;

  /**
   * A range in dB.
   *
   * @param leastDb at most {@code mostDb}
   */
  public record Window(double leastDb, double mostDb) {
    public Window {
      if (!(leastDb <= mostDb)) {
        throw new IllegalArgumentException("no range: " + leastDb + " to " + mostDb + " dB");
      }
    }

    boolean holds(double db) {
      return leastDb <= db && db <= mostDb;
    }
  }

  public Wish {
    if (!(fillPct > 0 && fillPct <= 100)) {
      throw new IllegalArgumentException(
          "the share to fill must be above 0 and at most 100 %, not " + fillPct);
    }
    if (!(fillWithinPct >= 0)) {
      throw new IllegalArgumentException("a miss is 0 % or more, not " + fillWithinPct);
    }
    if (monoLossAtMostDb.isPresent() && !(monoLossAtMostDb.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("a loss is 0 dB or more, not " + monoLossAtMostDb);
    }
  }

  boolean isFilledBy(double reachedPct) {
    return Math.abs(reachedPct - fillPct) <= fillWithinPct;
  }

  /** Fill a share of the base, whatever mono and room do. */
  public static Wish fill(double fillPct) {
    return new Wish(fillPct, USUAL_WITHIN_PCT, OptionalDouble.empty(), Optional.empty());
  }
}
