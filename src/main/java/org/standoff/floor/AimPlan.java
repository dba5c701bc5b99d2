package org.standoff.floor;

import java.util.List;
import java.util.Optional;

/**
 * The advice for some microphones, with the barrier that serves them best together.
 *
 * @param barrier the place chosen from those offered; empty when no barrier is better than none
 * @param advice in the order asked for
 */
public record AimPlan(Optional<PlacedBarrier> barrier, List<AimAdvice> advice) {
  public AimPlan {
    advice = List.copyOf(advice);
  }
}
