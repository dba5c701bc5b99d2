package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.standoff.kit.Model;

/**
 * What a house has of one model, and what of it is free for a whole period and its turn-round.
 *
 * @param model house and microphone
 * @param unitCount units that are not retired
 * @param inRepairCount units in repair among them
 * @param overdueCount units that a desk should have brought back by now: nobody knows when they
 *     come, so they are not free, however far off the period is
 * @param loose free units that belong to no group, by their rate, cheapest first
 * @param groups matched groups that are free as a whole, by the rates of their units
 */
public record Shelf(
    Model model,
    int unitCount,
    int inRepairCount,
    int overdueCount,
    List<Loose> loose,
    List<Group> groups) {

  /**
   * Free units of one rate.
   *
   * @param dayRateMinor charge for a day, in minor units of the house's currency
   * @param count how many there are
   */
  public record Loose(long dayRateMinor, int count) {}

  /**
   * Free groups that are alike.
   *
   * @param dayRatesMinor rates of the units of each
   * @param count how many there are
   */
  public record Group(List<Long> dayRatesMinor, int count) {
    public Group {
      dayRatesMinor = List.copyOf(dayRatesMinor);
    }

    /** Units of each. */
    public int size() {
      return dayRatesMinor.size();
    }
  }

  public Shelf {
    loose = List.copyOf(loose);
    groups = List.copyOf(groups);
  }

  /** A shelf with nothing on it. */
  static Shelf empty(Model model) {
    return new Shelf(model, 0, 0, 0, List.of(), List.of());
  }

  /** Units that can leave; one that stays behind from a broken group can't. */
  public int freeCount() {
    return looseCount() + groups.stream().mapToInt(group -> group.size() * group.count()).sum();
  }

  /** Groups that can leave. */
  public int groupCount() {
    return groups.stream().mapToInt(Group::count).sum();
  }

  public Lots lots() {
    List<Integer> sizes = new ArrayList<>();
    groups.forEach(group -> sizes.addAll(Collections.nCopies(group.count(), group.size())));
    return new Lots(looseCount(), sizes);
  }

  private int looseCount() {
    return loose.stream().mapToInt(Loose::count).sum();
  }
}
