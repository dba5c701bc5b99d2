package org.standoff.answers.kit;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.standoff.kit.free.AtTheDoor;
import org.standoff.kit.free.Split;

/**
 * The answer to an {@link AvailabilityQuestion}. Times at a house have the offset of its zone.
 *
 * @param kitRevision names the state of the kit that it rests on
 * @param asOf when that was looked at, by the clock of the database
 * @param confirmBy by when a hold that is made then must be confirmed, where its desk names no time
 * @param from beginning of the period
 * @param to end of the period, which does not belong to it
 * @param houses on which terms each house would lend
 * @param lines line by line, what each house has
 * @param fewestHouses all that can be had, from as few houses as can be
 * @param cheapest all that can be had for as little as can be, once for each currency
 * @param catalogueRevision revision of the catalogue that substitutes were looked up in
 * @param engineVersion version of the calculation
 */
public record AvailabilityAnswer(
    String kitRevision,
    Instant asOf,
    Instant confirmBy,
    Instant from,
    Instant to,
    List<HouseAsked> houses,
    List<LineFound> lines,
    WayToGetIt fewestHouses,
    List<WayToGetIt> cheapest,
    String catalogueRevision,
    String engineVersion) {

  /**
   * A house and the period.
   *
   * @param chargedDays days that it charges for the period
   * @param turnRoundMin between a return and the next collection, counted as busy
   * @param possible whether it can hand out and take back then; without, no split uses it
   * @param collectionOpen whether it is open when the period begins
   * @param collectionFrom first moment from then on at which it is
   * @param returned how kit comes back when the period ends
   * @param checkedInAt when it is then checked in, or could come back at the earliest
   */
  public record HouseAsked(
      String house,
      String title,
      String zone,
      String currency,
      double chargedDays,
      long minimumMinor,
      long turnRoundMin,
      boolean possible,
      boolean collectionOpen,
      OffsetDateTime collectionFrom,
      AtTheDoor.ReturnWay returned,
      OffsetDateTime checkedInAt) {}

  /**
   * A line.
   *
   * @param line its place in the question, counted from 1
   */
  public record LineFound(
      int line, String microphone, int quantity, boolean matched, List<LineAtHouse> houses) {}

  /**
   * A line at a house, as if it were the only one.
   *
   * @param enough whether the house can meet it
   * @param freeCount units that can leave for the whole period
   * @param freeGroupCount matched groups that can
   * @param unitCount units that it has at all
   * @param inRepairCount in repair among them
   * @param overdueCount with a desk that should have brought them back, among them
   * @param shortPeriods when too few are there at once, turn-round counted
   * @param onlyByChanging whether enough are there at every moment, but not the same ones
   *     throughout
   * @param nextFree the next period of the same length that begins in opening hours and in which
   *     there are enough
   * @param substitutes what could stand in, least lost first
   */
  public record LineAtHouse(
      String house,
      boolean enough,
      int freeCount,
      int freeGroupCount,
      int unitCount,
      int inRepairCount,
      int overdueCount,
      List<Stretch> shortPeriods,
      boolean onlyByChanging,
      Optional<Stretch> nextFree,
      List<Substitute> substitutes) {}

  /** A stretch of time, half-open. */
  public record Stretch(OffsetDateTime from, OffsetDateTime to) {}

  /**
   * A split.
   *
   * @param houseCount houses that it uses
   * @param parts what comes from where
   * @param charges what each house charges
   * @param totals what that comes to, currency by currency
   * @param unmet what can't be had
   * @param exact whether every way was looked at; a very large question is cut off
   */
  public record WayToGetIt(
      int houseCount,
      List<Part> parts,
      List<Split.HouseCharge> charges,
      List<Total> totals,
      List<Unmet> unmet,
      boolean exact) {}

  /** Units of one rate for one line, counted from 1. */
  public record Part(
      int line,
      String house,
      String microphone,
      int quantity,
      long dayRateMinor,
      long chargeMinor) {}

  /** A sum in one currency. */
  public record Total(String currency, long chargeMinor) {}

  /** Units of a line, counted from 1, that are not to be had. */
  public record Unmet(int line, String microphone, int missingCount) {}
}
