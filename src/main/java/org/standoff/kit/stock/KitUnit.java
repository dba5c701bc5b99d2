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
 * @param replacementMinor what the house asks for it where it does not come back, in minor units of
 *     its currency; 0 to {@link #MOST_REPLACEMENT_MINOR}, null where it does not say
 * @param matchWithinDb how far the sensitivities of its group are apart at most, by the house's own
 *     measure; 0 to {@link #WIDEST_MATCH_DB} dB, kept to 0.01 dB; null where it does not say
 */
public record KitUnit(
    String serial,
    String microphone,
    @Nullable String matchedGroup,
    UnitState state,
    long dayRateMinor,
    String note,
    @Nullable Long replacementMinor,
    @Nullable Double matchWithinDb) {

  /** Form of a serial number and of the name of a matched group. */
  public static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

  public static final int LONGEST_NAME = 64;
  public static final long MOST_RATE_MINOR = 1_000_000_000;
  public static final int LONGEST_NOTE = 500;
  public static final long MOST_REPLACEMENT_MINOR = 100_000_000_000L;

  /** What is further apart is no match. */
  public static final int WIDEST_MATCH_DB = 6;

  /** More places than the service tells of a level would come back as another value. */
  public KitUnit {
    matchWithinDb = matchWithinDb == null ? null : Math.round(matchWithinDb * 100) / 100.0;
  }

  KitUnit in(UnitState other) {
    return new KitUnit(
        serial,
        microphone,
        matchedGroup,
        other,
        dayRateMinor,
        note,
        replacementMinor,
        matchWithinDb);
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
