package org.standoff.kit.hold;

import java.time.Instant;
import java.util.Optional;
import org.standoff.kit.Period;
import org.standoff.kit.house.Charge;
import org.standoff.kit.house.HouseTerms;

/**
 * When kit changes hands at a house: while its door is open; back into the drop-box, where it has
 * one, at any time.
 */
public final class Handover {

  private final HouseTerms terms;

  public Handover(HouseTerms terms) {
    this.terms = terms;
  }

  /** The next opening, where the house is closed at the time of a collection. */
  public Optional<Instant> refusesCollection(Instant at) {
    return Optional.of(opening(at)).filter(opening -> !opening.equals(at));
  }

  /** The next opening, where nobody and nothing takes kit back at that time. */
  public Optional<Instant> refusesReturn(Instant at) {
    return Optional.of(opening(at)).filter(opening -> !terms.dropBox() && !opening.equals(at));
  }

  /**
   * How long a unit is busy that is lent for a period: until it is checked in, which for the
   * drop-box is at the next opening, and turned round.
   */
  public Period busy(Period lent) {
    return new Period(lent.from(), opening(lent.to()).plus(terms.turnRound()));
  }

  /** What a unit of a day's rate costs for a period, in minor units of the house's currency. */
  long chargeMinor(long dayRateMinor, Period lent) {
    return Charge.minor(terms, dayRateMinor, lent);
  }

  /** From when a unit that is checked in now can be lent again. */
  public Instant readyAfter(Instant checkIn) {
    return checkIn.plus(terms.turnRound());
  }

  /** The first moment from this one on at which kit can be collected. */
  public Instant opening(Instant at) {
    return terms.hours().nextOpening(at, terms.zone());
  }
}
