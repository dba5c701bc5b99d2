package org.standoff.answers.kit;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.Texts;
import org.standoff.kit.free.WantedLine;

/** Units of one model that are wanted. */
@Schema(description = "Units of one model that are wanted")
public record AskedLine(
    @Schema(description = "Id of the model", examples = "boathouse/sdc-omni-1")
        @NotNull
        @Size(max = ItemId.LONGEST)
        @Pattern(regexp = Texts.ONE_LINE)
        String microphone,
    @Schema(description = "How many units; 1 where left out", examples = "2") @Min(1) @Max(50)
        @Nullable Integer quantity,
    @Schema(
            description =
                "Whether they must be one matched group of just that many; false where left out")
        @Nullable Boolean matched) {

  WantedLine wanted() {
    return new WantedLine(microphone, quantity == null ? 1 : quantity, matched != null && matched);
  }
}
