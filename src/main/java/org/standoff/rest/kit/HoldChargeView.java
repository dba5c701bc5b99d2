package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.hold.HoldCharge;
import org.standoff.kit.hold.HoldState;

/**
 * What a hold costs.
 *
 * @param hold its id
 * @param reference the desk's own name for it
 * @param state how it stands
 * @param from when the units are collected
 * @param to when they come back
 * @param asOf when that was looked at
 * @param houses house by house
 * @param totals currency by currency
 * @param assumptions what the sums rest on
 */
@Schema(
    name = "HoldCharge",
    description =
        "What a hold costs, as much of it as the caller may see; money in minor units of a currency")
public record HoldChargeView(
    @Schema(description = "Id of the hold", examples = HoldExamples.OUT) String hold,
    @Schema(description = "The desk's own name for it") String reference,
    @Schema(description = "How it stands; more may come") HoldState state,
    @Schema(description = "When the units are collected") Instant from,
    @Schema(description = "When they come back; does not belong to the period") Instant to,
    @Schema(description = "When that was looked at: what is not back by then goes on being late")
        Instant asOf,
    @Schema(
            description =
                "Houses whose units are held or were collected, in the order of the lines; none of a"
                    + " hold that waits or fell")
        List<AtHouse> houses,
    @Schema(description = "What is owed, currency by currency: never added") List<Owed> totals,
    @Schema(description = "What the sums rest on") List<String> assumptions) {

  private static final List<String> ASSUMPTIONS =
      List.of(
          "Rates and replacements are those of the moment in which the units were promised, or today's"
              + " where that was before they were noted; time zone, opening hours, weekend days and"
              + " least charge are those that the house tells now.",
          "Charged are the days of the house's calendar that the held period touches, whether a unit"
              + " was collected early or late, or came back early.",
          "What was given up without having been collected, by its desk or when the rest came back,"
              + " costs nothing; the house may have agreed otherwise.",
          "Late are days of that calendar after the one on which the unit was due, at its own rate"
              + " (common practice); what the house has agreed with the desk goes before.",
          "What is missing may still come back: its replacement is told beside what is owed, not in"
              + " it. Taxes are in nothing.");

  /** What one house charges. */
  @Schema(name = "ChargeOfHouse", description = "What one house charges for a hold")
  public record AtHouse(
      @Schema(description = "Id of the house") String house,
      @Schema(description = "Revision of its terms that was counted by") long revision,
      @Schema(description = "ISO 4217 code of its currency") String currency,
      @Schema(description = "Unit by unit") List<OfUnit> units,
      @Schema(description = "Sum of the units, without what is late") long sumMinor,
      @Schema(description = "Least charge of the house for a hold") long minimumMinor,
      @Schema(description = "The greater of the two") long chargeMinor,
      @Schema(description = "What came back late, or is late now, costs on top") long lateMinor,
      @Schema(description = "Charge and late days together") long owedMinor,
      @Schema(description = "Units that should be back and are not") int missingCount,
      @Schema(
              description =
                  "What their replacement costs, of those of which the house says it; not part of"
                      + " what is owed")
          long missingReplacementMinor) {

    static AtHouse of(HoldCharge.AtHouse at) {
      List<HoldCharge.OfUnit> missing = at.missing();
      return new AtHouse(
          at.terms().id(),
          at.terms().revision(),
          at.terms().currency().getCurrencyCode(),
          at.units().stream().map(unit -> OfUnit.of(unit, at.terms().zone())).toList(),
          at.sumMinor(),
          at.terms().minimumChargeMinor(),
          at.chargeMinor(),
          at.lateMinor(),
          at.owedMinor(),
          missing.size(),
          missing.stream()
              .map(unit -> unit.held().replacementMinor())
              .flatMap(Optional::stream)
              .mapToLong(Long::longValue)
              .sum());
    }
  }

  /** What one unit costs. */
  @Schema(name = "ChargeOfUnit", description = "What one unit of a hold costs")
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record OfUnit(
      @Schema(description = "Line of the hold, counted from 1") int line,
      @Schema(description = "Id of the catalogue item") String microphone,
      @Schema(description = "Its serial number in the house") String serial,
      @Schema(description = "Charge for a day when it was promised") long dayRateMinor,
      @Schema(description = "Days that its house charges for the period; parts of days possible")
          double chargedDays,
      @Schema(description = "Charge for the period") long chargeMinor,
      @Schema(
              description =
                  "When its house has it back: the end of the period, as it stood for this unit, or"
                      + " the first opening after that; in the offset of the house")
          OffsetDateTime dueAt,
      @Schema(description = "When it was handed over; absent before") @Nullable Instant outAt,
      @Schema(description = "When it was back; absent before") @Nullable Instant inAt,
      @Schema(
              description =
                  "Days charged that it came back late, or is late now; parts of days possible")
          double lateDays,
      @Schema(description = "What they cost") long lateMinor,
      @Schema(description = "Whether it should be back and is not") boolean missing,
      @Schema(
              description =
                  "What the house asked for it, where it does not come back, when it was promised;"
                      + " absent where it did not say")
          @Nullable Long replacementMinor) {

    static OfUnit of(HoldCharge.OfUnit unit, ZoneId zone) {
      return new OfUnit(
          unit.line() + 1,
          unit.microphone(),
          unit.held().serial(),
          unit.held().dayRateMinor(),
          unit.chargedDays(),
          unit.chargeMinor(),
          unit.dueAt().atZone(zone).toOffsetDateTime(),
          unit.held().outAt().orElse(null),
          unit.held().inAt().orElse(null),
          unit.lateDays(),
          unit.lateMinor(),
          unit.missing(),
          unit.held().replacementMinor().orElse(null));
    }
  }

  /** What is owed in one currency. */
  @Schema(name = "Owed", description = "What is owed in one currency")
  public record Owed(
      @Schema(description = "ISO 4217 code") String currency,
      @Schema(description = "What is owed") long owedMinor) {}

  static HoldChargeView of(HoldCharge charge) {
    TreeMap<String, Long> totals = new TreeMap<>();
    charge
        .houses()
        .forEach(
            at -> totals.merge(at.terms().currency().getCurrencyCode(), at.owedMinor(), Long::sum));
    return new HoldChargeView(
        charge.hold().id().toString(),
        charge.hold().reference(),
        charge.hold().state(),
        charge.hold().period().from(),
        charge.hold().period().to(),
        charge.asOf(),
        charge.houses().stream().map(AtHouse::of).toList(),
        totals.entrySet().stream()
            .map(total -> new Owed(total.getKey(), total.getValue()))
            .toList(),
        ASSUMPTIONS);
  }
}
