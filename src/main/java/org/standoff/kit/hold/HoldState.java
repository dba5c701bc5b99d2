package org.standoff.kit.hold;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** How a hold stands. Those from tentative to out have units that nobody else can have. */
public enum HoldState {
  /** A second hold: it has no units yet and takes the first that are enough. */
  WAITING(EnumSet.of(HoldStep.RELEASE, HoldStep.EXTEND)),
  /** Has its units and falls at a told time unless it is confirmed. */
  TENTATIVE(EnumSet.of(HoldStep.CONFIRM, HoldStep.RELEASE, HoldStep.EXTEND)),
  /** Has its units for good. */
  CONFIRMED(EnumSet.of(HoldStep.RELEASE, HoldStep.EXTEND, HoldStep.CHECK_OUT)),
  /** At least one unit was collected, and not all are settled. */
  OUT(EnumSet.of(HoldStep.RELEASE, HoldStep.EXTEND, HoldStep.CHECK_OUT, HoldStep.CHECK_IN)),
  /** Everything that was collected is back. */
  RETURNED(EnumSet.noneOf(HoldStep.class)),
  /** Given up by its desk. */
  RELEASED(EnumSet.noneOf(HoldStep.class)),
  /** Fell because nobody confirmed it, or because its turn never came. */
  EXPIRED(EnumSet.noneOf(HoldStep.class));

  private final Set<HoldStep> steps;

  HoldState(Set<HoldStep> steps) {
    this.steps = steps;
  }

  /** What may be done with a hold in this state. */
  public Set<HoldStep> steps() {
    return Collections.unmodifiableSet(steps);
  }

  /** As the table spells it. */
  public String spelt() {
    return name().toLowerCase(Locale.ROOT);
  }

  static HoldState ofSpelling(String word) {
    return Arrays.stream(values())
        .filter(state -> state.spelt().equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(word));
  }
}
