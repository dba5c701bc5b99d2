package org.standoff.kit.hold;

import java.util.List;
import org.standoff.kit.Period;

/** Not everything that a hold wants is free, so it has nothing. */
public final class Shortage extends HoldRefused {

  private static final long serialVersionUID = 1L;

  private final transient Period period;
  private final transient List<WantedLine> lines;
  private final transient List<Shortfall> shortfalls;

  Shortage(Period period, List<WantedLine> lines, List<Shortfall> shortfalls) {
    super(
        shortfalls.size() == 1
            ? "One line can't be met, so nothing was held."
            : shortfalls.size() + " lines can't be met, so nothing was held.");
    this.period = period;
    this.lines = List.copyOf(lines);
    this.shortfalls = List.copyOf(shortfalls);
  }

  /** For when it was wanted. */
  public Period period() {
    return period;
  }

  /** All that was wanted, short or not. */
  public List<WantedLine> lines() {
    return lines;
  }

  /** In the order of the lines. */
  public List<Shortfall> shortfalls() {
    return shortfalls;
  }
}
