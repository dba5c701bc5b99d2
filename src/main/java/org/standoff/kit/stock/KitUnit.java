package org.standoff.kit.stock;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One microphone with its serial number, as its house tells it.
 *
 * @param serial unique in the house; of the form {@link #NAME}
 * @param microphone id of the catalogue item that describes it
 * @param matchedGroup units of one group were matched and leave together only; null for none
 * @param state whether it can be lent
 * @param dayRateMinor charge for a day, in minor units of the currency of the house; 0 to {@link
 *     #MOST_RATE_MINOR}
 * @param note for people; at most {@link #LONGEST_NOTE} characters
 */
public record KitUnit(
    String serial,
    String microphone,
    @Nullable String matchedGroup,
    UnitState state,
    long dayRateMinor,
    String note) {

  /** Form of a serial number and of the name of a matched group. */
  public static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

  public static final int LONGEST_NAME = 64;
  public static final long MOST_RATE_MINOR = 1_000_000_000;
  public static final int LONGEST_NOTE = 500;

  KitUnit in(UnitState other) {
    return new KitUnit(serial, microphone, matchedGroup, other, dayRateMinor, note);
  }

  /**
   * Whether the other is the same to whoever wants units: only then can nobody have what he could
   * not have before. One that goes may make the rest of its group whole.
   */
  boolean standsAs(KitUnit other) {
    return microphone.equals(other.microphone)
        && Objects.equals(matchedGroup, other.matchedGroup)
        && state == other.state;
  }
}
