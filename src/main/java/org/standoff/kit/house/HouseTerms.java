package org.standoff.kit.house;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Currency;

/**
 * On which terms a house lends.
 *
 * @param id lower-case letters, digits and single hyphens
 * @param title the name for people
 * @param zone in which its days begin and end and its hours are told
 * @param currency in which it charges
 * @param hours when it is open
 * @param turnRound between a return and the next collection; whole minutes, 0 to 28 days
 * @param dropBox whether kit may come back while it is closed; it is then checked in at the next
 *     opening
 * @param weekendDays days charged for a Saturday and the Sunday after it together; 0 to 2
 * @param minimumChargeMinor least charge for a hold, in minor units of the currency
 * @param revision counts changes of these terms, from 1
 */
public record HouseTerms(
    String id,
    String title,
    ZoneId zone,
    Currency currency,
    OpeningHours hours,
    Duration turnRound,
    boolean dropBox,
    BigDecimal weekendDays,
    long minimumChargeMinor,
    long revision) {

  /** 1.50 and 1.5 are the same number of days. */
  public HouseTerms {
    weekendDays = weekendDays.stripTrailingZeros();
  }

  /** The same terms under another count. */
  public HouseTerms withRevision(long other) {
    return new HouseTerms(
        id,
        title,
        zone,
        currency,
        hours,
        turnRound,
        dropBox,
        weekendDays,
        minimumChargeMinor,
        other);
  }
}
