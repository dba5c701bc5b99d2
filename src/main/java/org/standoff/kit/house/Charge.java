package org.standoff.kit.house;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import org.standoff.kit.Period;

/**
 * What a hire costs. Charged are the calendar days of the house's own zone that the period touches,
 * the day of collection and the day of return included. Each counts one, but for a Saturday and the
 * Sunday after it: both together count the house's weekend days, one of them without the other half
 * of that. The end of a period is not part of it, so a return at midnight does not touch the day
 * that begins then.
 */
public final class Charge {

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private Charge() {}

  /** Days charged; half-days can come out, and less where a house's weekend is priced so. */
  public static double days(HouseTerms house, Period period) {
    return exactDays(house, period).doubleValue();
  }

  /**
   * What one unit costs for the period, in minor units of the house's currency, half a unit rounded
   * up. The house's least charge is for a whole hold: see {@link #whole}.
   *
   * @param dayRateMinor of the unit
   */
  public static long minor(HouseTerms house, long dayRateMinor, Period period) {
    return times(dayRateMinor, exactDays(house, period));
  }

  /**
   * Days charged for what came back late: those of the house's calendar after the one on which it
   * was due, to the one on which it was back. Later on the day on which it was due is not late.
   *
   * @param due a moment of that day
   * @param back when it was back
   */
  public static double lateDays(HouseTerms house, Instant due, Instant back) {
    return exactLateDays(house, due, back).doubleValue();
  }

  /** What those cost for one unit, as {@link #minor} counts. */
  public static long lateMinor(HouseTerms house, long dayRateMinor, Instant due, Instant back) {
    return times(dayRateMinor, exactLateDays(house, due, back));
  }

  /** What all units of one hold cost at the house: their sum, or its least charge. */
  public static long whole(HouseTerms house, long sumMinor) {
    return Math.max(sumMinor, house.minimumChargeMinor());
  }

  private static BigDecimal exactDays(HouseTerms house, Period period) {
    LocalDate first = LocalDate.ofInstant(period.from(), house.zone());
    LocalDate last = LocalDate.ofInstant(period.to().minusNanos(1), house.zone());
    return exactDays(house, first, last);
  }

  private static BigDecimal exactLateDays(HouseTerms house, Instant due, Instant back) {
    LocalDate first = LocalDate.ofInstant(due, house.zone()).plusDays(1);
    LocalDate last = LocalDate.ofInstant(back, house.zone());
    return last.isBefore(first) ? BigDecimal.ZERO : exactDays(house, first, last);
  }

  private static long times(long dayRateMinor, BigDecimal days) {
    return BigDecimal.valueOf(dayRateMinor)
        .multiply(days)
        .setScale(0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private static BigDecimal exactDays(HouseTerms house, LocalDate first, LocalDate last) {
    long weekendDays =
        first.datesUntil(last.plusDays(1)).filter(day -> isOfWeekend(day.getDayOfWeek())).count();
    long all = last.toEpochDay() - first.toEpochDay() + 1;
    return BigDecimal.valueOf(all - weekendDays)
        .add(house.weekendDays().multiply(BigDecimal.valueOf(weekendDays)).divide(TWO));
  }

  private static boolean isOfWeekend(DayOfWeek day) {
    return day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY;
  }
}
