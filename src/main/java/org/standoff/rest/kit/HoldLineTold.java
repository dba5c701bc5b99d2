package org.standoff.rest.kit;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.Texts;
import org.standoff.kit.hold.WantedLine;

/**
 * Units of one model at one house that are wanted.
 *
 * @param house that lends them
 * @param microphone id of the catalogue item
 * @param quantity how many; 1 where left out
 * @param matched whether they must be one matched group; false where left out
 */
@Schema(
    name = "HoldLineTold",
    description =
        "Units of one model at one house that are wanted. The hold takes those that cost least for"
            + " its period, as availability quotes them; among equals single units before those of"
            + " groups, then the first by serial number or name of the group. Lines of one model at"
            + " one house share what there is, a group too")
public record HoldLineTold(
    @Schema(description = "Id of the house that lends them", examples = HoldExamples.HOUSE)
        @NotNull
        @Size(max = 64)
        @Pattern(regexp = Texts.ONE_LINE)
        String house,
    @Schema(description = "Id of the catalogue item", examples = "boathouse/sdc-omni-1")
        @NotNull
        @Size(max = ItemId.LONGEST)
        @Pattern(regexp = Texts.ONE_LINE)
        String microphone,
    @Schema(description = "How many units; 1 where left out", examples = "2") @Min(1) @Max(50)
        Integer quantity,
    @Schema(
            description =
                "Whether they must be one matched group of just that many; false where left out")
        Boolean matched) {

  WantedLine wanted() {
    return new WantedLine(
        house, microphone, quantity == null ? 1 : quantity, Boolean.TRUE.equals(matched));
  }
}
