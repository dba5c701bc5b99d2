package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.StoredUnit;
import org.standoff.kit.stock.UnitState;
import org.standoff.rest.http.Tagged;

/**
 * A unit of a house.
 *
 * @param house its owner
 * @param serial its number in the house
 * @param microphone id of the catalogue item that describes it
 * @param matchedGroup units of one group were matched and leave together only
 * @param state whether it can be lent
 * @param dayRateMinor charge for a day
 * @param note for people
 * @param replacementMinor what the house asks for it where it does not come back
 * @param matchWithinDb how far the sensitivities of its group are apart at most
 * @param revision counts its changes
 * @param etag the entity tag of the unit
 */
@Schema(name = "Unit", description = "A unit of a house: one microphone with its serial number")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record UnitView(
    @Schema(description = "Id of the house that owns it") String house,
    @Schema(description = "Its serial number in the house") String serial,
    @Schema(description = "Id of the catalogue item that describes it") String microphone,
    @Schema(
            description =
                "Units of one group were matched and leave together only; absent for a unit of no"
                    + " group")
        @Nullable String matchedGroup,
    @Schema(
            description =
                "Whether it can be lent; a retired one stays on record for the hires that it had")
        UnitState state,
    @Schema(description = "Charge for a day, in minor units of the house's currency")
        long dayRateMinor,
    @Schema(description = "For people") String note,
    @Schema(
            description =
                "What the house asks for it where it does not come back, in minor units of its"
                    + " currency; absent where it does not say")
        @Nullable Long replacementMinor,
    @Schema(
            description =
                "How far the sensitivities of its group are apart at most, by the house's own"
                    + " measure; absent where it does not say")
        @Nullable Double matchWithinDb,
    @Schema(description = "Counts the changes of this unit") long revision,
    @Schema(description = "Its entity tag, to be sent as If-Match with a change") String etag) {

  static UnitView of(StoredUnit stored) {
    KitUnit unit = stored.unit();
    return new UnitView(
        stored.house(),
        unit.serial(),
        unit.microphone(),
        unit.matchedGroup(),
        unit.state(),
        unit.dayRateMinor(),
        unit.note(),
        unit.replacementMinor(),
        unit.matchWithinDb(),
        stored.revision(),
        tag(stored.house(), unit.serial(), stored.revision()));
  }

  static Tagged tagged(StoredUnit stored) {
    UnitView view = of(stored);
    return new Tagged(view.etag(), view);
  }

  static String tag(String house, String serial, long revision) {
    return "\"" + house + "/" + serial + "-" + revision + "\"";
  }
}
