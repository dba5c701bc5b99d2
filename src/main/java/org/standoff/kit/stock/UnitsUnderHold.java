package org.standoff.kit.stock;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * Units that are promised to somebody would be retired, or become another microphone. Told to the
 * house that owns them, which may know who holds its kit.
 */
public final class UnitsUnderHold extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** How many are named. */
  public static final int MOST_NAMED = 100;

  /**
   * A promise that stands in the way.
   *
   * @param serial of the unit
   * @param hold the hold that has it
   * @param until when it is free again, turn-round included
   */
  public record Promise(String serial, UUID hold, Instant until) {}

  private final transient List<Promise> promises;

  public UnitsUnderHold(List<Promise> promises) {
    super("Units that are promised can't be retired or become another microphone.");
    this.promises = List.copyOf(promises);
  }

  /** In the order of their serial numbers; at most {@link #MOST_NAMED}. */
  public List<Promise> promises() {
    return promises;
  }
}
