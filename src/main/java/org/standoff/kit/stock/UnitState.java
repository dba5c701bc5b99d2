package org.standoff.kit.stock;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whether a unit can be lent. */
public enum UnitState {
  /** On the shelf or on hire. */
  AVAILABLE,
  /** Not lent until it is mended. */
  IN_REPAIR,
  /** Gone for good; it stays on record for the hires that it had. */
  RETIRED;

  /** The word in tables and sheets: {@code in-repair}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The state of that word. */
  public static Optional<UnitState> of(String word) {
    return Arrays.stream(values()).filter(state -> state.word().equals(word)).findFirst();
  }
}
