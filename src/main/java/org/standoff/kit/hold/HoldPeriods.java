package org.standoff.kit.hold;

import java.time.Instant;
import java.util.List;
import org.standoff.kit.Period;

/** Periods that a hold can have. */
final class HoldPeriods {

  private HoldPeriods() {}

  /**
   * @throws WishRefused where it is over already, or longer than {@link HoldWish#LONGEST}
   */
  static void check(Period period, Instant now) {
    if (!period.to().isAfter(now)) {
      throw refused("The hold would be over already.", period.to(), "later than " + now);
    }
    if (period.length().compareTo(HoldWish.LONGEST) > 0) {
      throw refused(
          "A hold is for at most %d days.".formatted(HoldWish.LONGEST.toDays()),
          period.to(),
          "at most " + period.from().plus(HoldWish.LONGEST));
    }
  }

  static WishRefused refused(String detail, Instant to, String allowed) {
    return new WishRefused(List.of(WishFault.of(WishFault.Place.TO, detail, to).allowed(allowed)));
  }
}
