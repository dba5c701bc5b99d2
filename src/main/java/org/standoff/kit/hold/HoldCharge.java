package org.standoff.kit.hold;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.standoff.kit.Period;
import org.standoff.kit.house.Charge;
import org.standoff.kit.house.HouseTerms;

/**
 * What a hold costs, house by house: for each unit the period that it was held for, at the rate of
 * the moment in which it was promised, and by the terms that its house tells now. What was given up
 * before anybody collected it costs nothing; what comes back early costs the whole period.
 *
 * @param hold as much of it as is charged here
 * @param asOf when that was looked at; what is not back by then goes on being late
 * @param houses those that have units in it, in the order of its lines
 */
public record HoldCharge(Hold hold, Instant asOf, List<AtHouse> houses) {

  /**
   * What one house charges.
   *
   * @param terms its own
   * @param units unit by unit
   */
  public record AtHouse(HouseTerms terms, List<OfUnit> units) {

    public AtHouse {
      units = List.copyOf(units);
    }

    /** The units, without what is late. */
    public long sumMinor() {
      return units.stream().mapToLong(OfUnit::chargeMinor).sum();
    }

    /** The same, or the house's least charge. */
    public long chargeMinor() {
      return Charge.whole(terms, sumMinor());
    }

    /** What came back late costs this on top. */
    public long lateMinor() {
      return units.stream().mapToLong(OfUnit::lateMinor).sum();
    }

    /** All that is owed to the house. */
    public long owedMinor() {
      return chargeMinor() + lateMinor();
    }

    /** Units that should be back and are not. */
    public List<OfUnit> missing() {
      return units.stream().filter(OfUnit::missing).toList();
    }
  }

  /**
   * What one unit costs.
   *
   * @param line its place in the hold, from 0
   * @param microphone id of the model
   * @param held the unit
   * @param chargedDays days that its house charges for the period
   * @param chargeMinor for the period
   * @param dueAt when its house has it back: the end of the period, or the first opening after that
   * @param lateDays days of the house's calendar after the one on which it was due
   * @param lateMinor what they cost
   * @param missing whether it should be back and is not
   */
  public record OfUnit(
      int line,
      String microphone,
      HeldUnit held,
      double chargedDays,
      long chargeMinor,
      Instant dueAt,
      double lateDays,
      long lateMinor,
      boolean missing) {}

  public HoldCharge {
    houses = List.copyOf(houses);
  }

  /**
   * Counts it.
   *
   * @param terms of all houses of the hold
   */
  static HoldCharge of(Hold hold, Map<String, HouseTerms> terms, Instant now) {
    Map<HouseTerms, List<OfUnit>> units = new LinkedHashMap<>();
    for (HeldLine line : hold.lines()) {
      HouseTerms house = Objects.requireNonNull(terms.get(line.wanted().house()));
      for (HeldUnit held : line.units()) {
        if (held.occupies()) {
          units
              .computeIfAbsent(house, any -> new ArrayList<>())
              .add(ofUnit(hold, line, held, house, now));
        }
      }
    }
    return new HoldCharge(
        hold,
        now,
        units.entrySet().stream().map(at -> new AtHouse(at.getKey(), at.getValue())).toList());
  }

  private static OfUnit ofUnit(
      Hold hold, HeldLine line, HeldUnit held, HouseTerms house, Instant now) {
    Period lent = new Period(hold.period().from(), held.lentTo());
    Instant due = new Handover(house).opening(lent.to());
    // the end of a period is no part of it, so a return at midnight is due on the day before
    Instant lastDay = due.equals(lent.to()) ? due.minusNanos(1) : due;
    Optional<Instant> late =
        held.outAt().map(out -> held.inAt().orElse(now)).filter(back -> back.isAfter(due));
    return new OfUnit(
        line.line(),
        line.wanted().microphone(),
        held,
        Charge.days(house, lent),
        Charge.minor(house, held.dayRateMinor(), lent),
        due,
        late.map(at -> Charge.lateDays(house, lastDay, at)).orElse(0.0),
        late.map(at -> Charge.lateMinor(house, held.dayRateMinor(), lastDay, at)).orElse(0L),
        late.isPresent() && held.inAt().isEmpty());
  }
}
