package org.standoff.rest.kit;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.Texts;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.UnitState;
import org.standoff.rest.json.TakesBack;

/**
 * What a house tells of one unit.
 *
 * @param serial its number, once in the house; may be left out where the address tells it
 * @param microphone id of the catalogue item that describes it
 * @param matchedGroup units of one group were matched and leave together only
 * @param state whether it can be lent; available where left out
 * @param dayRateMinor charge for a day
 * @param note for people
 * @param replacementMinor what the house asks for it where it does not come back
 * @param matchWithinDb how far the sensitivities of its group are apart at most
 */
@TakesBack(UnitView.class)
@Schema(name = "UnitTold", description = "What a house tells of one unit")
public record UnitTold(
    @Schema(
            description =
                "Its serial number, once in the house; may be left out where the address tells it",
            examples = "QS-0104")
        @Size(max = KitUnit.LONGEST_NAME)
        @Pattern(regexp = KitUnit.NAME)
        String serial,
    @Schema(
            description = "Id of the catalogue item that describes it",
            examples = "core/ldc-multi-1")
        @NotNull
        @Size(max = ItemId.LONGEST)
        @Pattern(regexp = Texts.NAME)
        String microphone,
    @Schema(
            description =
                "Units of one group were matched and leave together only; left out for a unit of"
                    + " no group")
        @Size(max = KitUnit.LONGEST_NAME)
        @Pattern(regexp = KitUnit.NAME)
        String matchedGroup,
    @Schema(description = "Whether it can be lent; available where left out") UnitState state,
    @Schema(
            description = "Charge for a day, in minor units of the house's currency",
            examples = "1800")
        @NotNull
        @Min(0)
        @Max(KitUnit.MOST_RATE_MINOR)
        Long dayRateMinor,
    @Schema(description = "For people; empty where left out")
        @Size(max = KitUnit.LONGEST_NOTE)
        @Pattern(regexp = Texts.LINES)
        String note,
    @Schema(
            description =
                "What the house asks for it where it does not come back, in minor units of its"
                    + " currency; left out where it does not say",
            examples = "64000")
        @Min(0)
        @Max(KitUnit.MOST_REPLACEMENT_MINOR)
        Long replacementMinor,
    @Schema(
            description =
                "How far the sensitivities of its group are apart at most, by the house's own"
                    + " measure; for a unit of a matched group alone, left out where the house does"
                    + " not say",
            examples = "0.5")
        @DecimalMin("0")
        @DecimalMax("" + KitUnit.WIDEST_MATCH_DB)
        Double matchWithinDb) {

  /**
   * @param number its serial number
   */
  KitUnit unit(String number) {
    return new KitUnit(
        number,
        microphone,
        matchedGroup,
        Objects.requireNonNullElse(state, UnitState.AVAILABLE),
        dayRateMinor,
        Objects.requireNonNullElse(note, ""),
        replacementMinor,
        matchWithinDb);
  }
}
