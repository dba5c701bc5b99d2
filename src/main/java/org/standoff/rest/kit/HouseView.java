package org.standoff.rest.kit;

import java.math.BigDecimal;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.house.HouseTerms;
import org.standoff.rest.http.Tagged;

/**
 * A house and its terms.
 *
 * @param id its name in addresses
 * @param title its name for people
 * @param zone IANA name of its time zone
 * @param currency ISO 4217 code in which it charges
 * @param hours when it is open; empty: at all times
 * @param turnRoundMin minutes between a return and the next collection
 * @param dropBox whether kit may come back outside the hours
 * @param weekendDays days charged for a Saturday and the Sunday after it
 * @param minimumChargeMinor least charge for a hold
 * @param revision counts the changes of these terms
 * @param etag the entity tag of the house
 */
@Schema(name = "House", description = "A house that lends, and its terms")
public record HouseView(
    @Schema(description = "Its name in addresses", examples = "quillmoor-store") String id,
    @Schema(description = "Its name for people") String title,
    @Schema(description = "IANA name of the time zone in which its days begin and end") String zone,
    @Schema(description = "ISO 4217 code of the currency in which it charges") String currency,
    @Schema(description = "When it is open, the same every week; empty: at all times")
        List<OpenSpan> hours,
    @Schema(description = "Minutes between a return and the next collection") long turnRoundMin,
    @Schema(
            description =
                "Whether kit may come back outside its hours, to be checked in at the next opening")
        boolean dropBox,
    @Schema(description = "Days charged for a Saturday and the Sunday after it together")
        BigDecimal weekendDays,
    @Schema(description = "Least charge for a hold, in minor units of the currency")
        long minimumChargeMinor,
    @Schema(description = "Counts the changes of these terms") long revision,
    @Schema(description = "Its entity tag, to be sent as If-Match with a change") String etag) {

  static HouseView of(HouseTerms terms) {
    return new HouseView(
        terms.id(),
        terms.title(),
        terms.zone().getId(),
        terms.currency().getCurrencyCode(),
        terms.hours().spans().stream().map(OpenSpan::of).toList(),
        terms.turnRound().toMinutes(),
        terms.dropBox(),
        terms.weekendDays(),
        terms.minimumChargeMinor(),
        terms.revision(),
        tag(terms.id(), terms.revision()));
  }

  static Tagged tagged(HouseTerms terms) {
    return new Tagged(tag(terms.id(), terms.revision()), of(terms));
  }

  static String tag(String id, long revision) {
    return "\"" + id + "-" + revision + "\"";
  }
}
