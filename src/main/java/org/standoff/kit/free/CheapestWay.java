package org.standoff.kit.free;

import static org.standoff.kit.free.Supply.IMPOSSIBLE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest way to get as much of what is wanted as a set of houses has, by branch and bound. A
 * house's least charge couples everything that comes from it, so it is not enough to take every
 * unit where it is cheapest: one more unit from a house whose least charge is due anyway may cost
 * nothing. Among equals fewer houses, then the first houses of the question.
 *
 * <p>The way is a walk through stages (groups of one size, or units, of one model) and within each
 * stage through the houses, deciding how many come from each. A branch is left where even the
 * cheapest rest, least charges aside, could not beat the best way known.
 */
final class CheapestWay {

  /** Steps of all searches of a question, after which the best way known has to do. */
  private static final int MOST_STEPS = 40_000;

  /** Counts the steps of searches that share what may be spent. */
  static final class Effort {
    private int steps;

    private boolean isSpent() {
      return steps > MOST_STEPS;
    }
  }

  /** Puts the number of houses behind the charge: 2^6 is more than there can be. */
  private static final int HOUSE_BITS = 6;

  /**
   * How many units or groups come from where.
   *
   * @param stages what the counts are of
   * @param counts by stage, then by house
   * @param exact whether no cheaper way exists
   */
  record Way(List<Stage> stages, int[][] counts, boolean exact) {

    /** Groups that matched lines take from a house, by size. */
    Map<Integer, Integer> groupsTaken(int pool, int house) {
      Map<Integer, Integer> taken = new HashMap<>();
      for (int i = 0; i < stages.size(); i++) {
        if (stages.get(i).pool() == pool && stages.get(i).ofGroups() && counts[i][house] > 0) {
          taken.put(stages.get(i).groupSize(), counts[i][house]);
        }
      }
      return taken;
    }
  }

  /**
   * Groups of one size, or units (size 0), that are wanted of one model.
   *
   * @param demand as much as the set of houses has
   */
  record Stage(int pool, int groupSize, int demand) {
    boolean ofGroups() {
      return groupSize > 0;
    }
  }

  private final Market market;
  private final boolean priced;
  private final int[] houses;
  private final long[] minimum;
  private final List<Stage> stages = new ArrayList<>();

  /** By stage and what matched lines of its model have taken, house by house. */
  private final List<Map<List<Map<Integer, Integer>>, Rest>> rests = new ArrayList<>();

  /** By stage: what this and all later ones cost, taken where it is cheap. */
  private final long[] later;

  private final int[][] counts;
  private final long[] sums;
  private final int[] uses;
  private final Effort effort;
  private boolean cut;
  private long bestKey = Long.MAX_VALUE;
  private int @Nullable [][] best;

  /**
   * @param set the houses that may be used
   * @param priced false where they charge in currencies that can't be compared: then every charge
   *     counts nothing, and few and first houses alone decide
   */
  private CheapestWay(Market market, int set, boolean priced, Effort effort) {
    this.market = market;
    this.effort = effort;
    this.priced = priced;
    this.houses =
        IntStream.range(0, market.houses().size())
            .filter(house -> Market.has(set, house))
            .toArray();
    this.minimum =
        Arrays.stream(houses)
            .mapToLong(house -> priced ? market.houses().get(house).minimumChargeMinor() : 0)
            .toArray();
    for (int pool = 0; pool < market.pools().size(); pool++) {
      for (int size : market.pools().get(pool).matchedLines().keySet()) {
        addStage(new Stage(pool, size, market.groupsMet(pool, size, set)));
      }
      addStage(new Stage(pool, 0, market.unitsMet(pool, set)));
    }
    this.counts = new int[stages.size()][houses.length];
    this.sums = new long[houses.length];
    this.uses = new int[houses.length];
    this.later = new long[stages.size() + 1];
    List<Map<Integer, Integer>> nothing = Collections.nCopies(houses.length, Map.of());
    stages.forEach(stage -> rests.add(new HashMap<>()));
    for (int stage = stages.size() - 1; stage >= 0; stage--) {
      later[stage] = later[stage + 1] + rest(stage, nothing).from(0, stages.get(stage).demand());
    }
  }

  /**
   * Finds it, or the best that the effort allows; some way in any case.
   *
   * @param effort what other searches of the question have spent of it counts too
   */
  static Way find(Market market, int set, boolean priced, Effort effort) {
    CheapestWay search = new CheapestWay(market, set, priced, effort);
    search.beginStage(0);
    return search.way();
  }

  private void addStage(Stage stage) {
    if (stage.demand() > 0) {
      stages.add(stage);
    }
  }

  /**
   * What the rest of a stage costs at least.
   *
   * @param charges by house, then by how many come from it
   * @param rest by house and rest: the cost of the rest from this house on, where it is cheapest
   */
  private record Rest(long[][] charges, long[][] rest) {
    long from(int at, int left) {
      return rest[at][left];
    }

    long charge(int at, int count) {
      return charges[at][count];
    }
  }

  private Rest rest(int stage, List<Map<Integer, Integer>> taken) {
    return rests.get(stage).computeIfAbsent(taken, groups -> newRest(stage, groups));
  }

  private Rest newRest(int stage, List<Map<Integer, Integer>> taken) {
    int demand = stages.get(stage).demand();
    long[][] charges = new long[houses.length][demand + 1];
    long[][] rest = new long[houses.length + 1][demand + 1];
    Arrays.fill(rest[houses.length], IMPOSSIBLE);
    rest[houses.length][0] = 0;
    for (int at = houses.length - 1; at >= 0; at--) {
      Arrays.fill(rest[at], IMPOSSIBLE);
      for (int count = 0; count <= demand; count++) {
        long here = charge(stage, at, count, taken.get(at));
        charges[at][count] = here;
        for (int left = count; here < IMPOSSIBLE && left <= demand; left++) {
          rest[at][left] = Math.min(rest[at][left], here + rest[at + 1][left - count]);
        }
      }
    }
    return new Rest(charges, rest);
  }

  private long charge(int stage, int at, int count, Map<Integer, Integer> taken) {
    Stage here = stages.get(stage);
    Supply supply = market.supply(here.pool(), houses[at]);
    long charge =
        here.ofGroups()
            ? supply.groupsCharge(here.groupSize(), count)
            : supply.unitsCharge(taken, count);
    return priced || charge >= IMPOSSIBLE ? charge : 0;
  }

  private void beginStage(int stage) {
    if (stage == stages.size()) {
      long key = key(0);
      if (key < bestKey) {
        bestKey = key;
        best = Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new);
      }
      return;
    }
    List<Map<Integer, Integer>> taken = new ArrayList<>();
    for (int at = 0; at < houses.length; at++) {
      taken.add(taken(stage, at));
    }
    decide(stage, rest(stage, taken), 0, stages.get(stage).demand());
  }

  /** A choice at a house: so many, at this charge. */
  private record Choice(int count, long chargeMinor, long withRest) {}

  private void decide(int stage, Rest rest, int at, int left) {
    if (left == 0) {
      beginStage(stage + 1);
      return;
    }
    effort.steps++;
    // the first way is found without a turning back
    if (effort.isSpent() && best != null) {
      cut = true;
      return;
    }
    List<Choice> choices = new ArrayList<>();
    for (int count = 0; count <= left; count++) {
      long charge = rest.charge(at, count);
      long after = rest.from(at + 1, left - count);
      if (charge < IMPOSSIBLE && after < IMPOSSIBLE) {
        choices.add(new Choice(count, charge, charge + after));
      }
    }
    choices.sort(
        Comparator.comparingLong(Choice::withRest)
            .thenComparing(Comparator.comparingInt(Choice::count).reversed()));
    for (Choice choice : choices) {
      take(stage, at, choice, 1);
      long after = rest.from(at + 1, left - choice.count()) + later[stage + 1];
      if (key(after) < bestKey) {
        decide(stage, rest, at + 1, left - choice.count());
      }
      take(stage, at, choice, -1);
    }
  }

  private void take(int stage, int at, Choice choice, int sign) {
    counts[stage][at] = sign > 0 ? choice.count() : 0;
    sums[at] += sign * choice.chargeMinor();
    uses[at] += choice.count() > 0 ? sign : 0;
  }

  /** Groups that matched lines of the stage's model have taken from the house. */
  private Map<Integer, Integer> taken(int stage, int at) {
    Map<Integer, Integer> taken = new HashMap<>();
    for (int before = stage - 1; before >= 0; before--) {
      if (stages.get(before).pool() != stages.get(stage).pool()) {
        break;
      }
      if (counts[before][at] > 0) {
        taken.put(stages.get(before).groupSize(), counts[before][at]);
      }
    }
    return taken;
  }

  /** The least that the way so far can come to, where the rest costs so much at least. */
  private long key(long restMinor) {
    long sum = restMinor;
    long withMinimum = 0;
    int used = 0;
    for (int at = 0; at < houses.length; at++) {
      sum += sums[at];
      if (uses[at] > 0) {
        used++;
        withMinimum += Math.max(sums[at], minimum[at]);
      }
    }
    return (Math.max(sum, withMinimum) << HOUSE_BITS) + used;
  }

  private Way way() {
    int[][] found = new int[stages.size()][market.houses().size()];
    if (best != null) {
      for (int stage = 0; stage < stages.size(); stage++) {
        for (int at = 0; at < houses.length; at++) {
          found[stage][houses[at]] = best[stage][at];
        }
      }
    }
    return new Way(stages, found, !cut);
  }
}
