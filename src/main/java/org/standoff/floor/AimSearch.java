package org.standoff.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.Level;

/**
 * Finds aims, patterns, places and a barrier that make the unwanted level least while the wanted
 * keeps within a stated loss: over all neighbours at once, in three dimensions. Every pattern is
 * looked at all over on a coarse grid, and each basin found there is descended into; so the search
 * starts many times and can tell the second-best basin.
 */
public final class AimSearch {
  private final FloorPlan plan;
  private final int order;

  /**
   * Prepares a search.
   *
   * @param plan a floor without faults
   * @param order of the reflections computed one by one
   * @throws IllegalArgumentException when the plan has a fault
   */
  public AimSearch(FloorPlan plan, int order) {
    List<FloorFault> faults = plan.faults();
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException("the floor has faults: " + faults);
    }
    this.plan = plan;
    this.order = order;
  }

  /** The best for one microphone without any new barrier. */
  public AimAdvice best(String microphoneId, AimLimits limits) {
    return best(Map.of(microphoneId, limits), List.of()).advice().get(0);
  }

  /**
   * The best for some microphones together.
   *
   * @param limits per microphone id, in the order of the answer
   * @param barrierPlaces where one more barrier may stand; the place (or none) is taken at which
   *     the mean of the unwanted levels is least
   * @throws IllegalArgumentException for a microphone that is not here or is there for the room
   */
  public AimPlan best(Map<String, AimLimits> limits, List<PlacedBarrier> barrierPlaces) {
    Map<FloorMicrophone, AimLimits> asked = new LinkedHashMap<>();
    limits.forEach((id, within) -> asked.put(microphone(id), within));
    FloorField open = new FloorField(plan, order);
    AimPlan best = new AimPlan(Optional.empty(), advice(open, open, asked));
    double leastDb = meanDb(best);
    for (PlacedBarrier place : barrierPlaces) {
      FloorPlan behind = plan.plus(place);
      if (behind.faults().isEmpty()) {
        AimPlan tried =
            new AimPlan(Optional.of(place), advice(open, new FloorField(behind, order), asked));
        double triedDb = meanDb(tried);
        if (triedDb < leastDb) {
          best = tried;
          leastDb = triedDb;
        }
      }
    }
    return best;
  }

  private static List<AimAdvice> advice(
      FloorField today, FloorField field, Map<FloorMicrophone, AimLimits> asked) {
    List<AimAdvice> advice = new ArrayList<>();
    asked.forEach(
        (microphone, limits) -> {
          AimView standing = new AimView(today, microphone, limits);
          List<AimSetting> basins = basins(field, microphone, limits, standing);
          AimSetting best = basins.get(0);
          Optional<AimSetting> second =
              basins.stream().filter(other -> apart(best, other)).findFirst();
          advice.add(new AimAdvice(microphone.id(), standing.today(), best, second));
        });
    return advice;
  }

  /** All basins of all patterns, the best first; today's setting is among them. */
  private static List<AimSetting> basins(
      FloorField field, FloorMicrophone microphone, AimLimits limits, AimView standing) {
    AimView view = new AimView(field, microphone, limits).keeping(standing);
    List<AimSetting> basins = new ArrayList<>();
    basins.add(view.today());
    basins.addAll(view.basins(microphone.pattern()));
    for (FloorPattern pattern : limits.patterns()) {
      if (!pattern.equals(microphone.pattern())) {
        basins.addAll(view.basins(pattern));
      }
    }
    basins.sort(Comparator.comparingDouble(AimSetting::unwantedAtEqualGainDb));
    if (limits.reachM() > 0) {
      basins.addAll(new ReachSearch(field, microphone, limits, view).from(basins));
      basins.sort(Comparator.comparingDouble(AimSetting::unwantedAtEqualGainDb));
    }
    return basins;
  }

  private static boolean apart(AimSetting best, AimSetting other) {
    return !best.pattern().equals(other.pattern())
        || best.aim().angleBetweenDeg(other.aim()) >= AimView.BASINS_APART_DEG;
  }

  private static double meanDb(AimPlan plan) {
    return plan.advice().stream()
        .mapToDouble(advice -> advice.best().unwantedAtEqualGainDb())
        .average()
        .orElse(Level.ofPowerRatio(0));
  }

  private FloorMicrophone microphone(String id) {
    FloorMicrophone found =
        plan.microphone(id)
            .orElseThrow(() -> new IllegalArgumentException("no microphone " + id + " is here"));
    if (found.wanted().isEmpty()) {
      throw new IllegalArgumentException(
          id + " is there for the room: nothing that it hears is unwanted");
    }
    return found;
  }
}
