package org.standoff.answers.floor;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;
import org.standoff.answers.Coordinates;
import org.standoff.answers.ToldLevel;
import org.standoff.catalogue.ItemId;

/** How a player of the ensemble plays, where it is not as the ensemble says. */
@Schema(description = "How a player of the ensemble plays, where it is not as the ensemble says")
public record Playing(
    @Schema(description = "The player", examples = "drums") @NotNull @Size(max = 64) String player,
    @Schema(
            description = "Which of the player's sources; the first where left out",
            examples = "core/drum-kit")
        @Size(max = ItemId.LONGEST)
        @Nullable String source,
    @Schema(
            description = "Placement whose radiator and spectrum count; the first that has a law",
            examples = "overhead")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "Named way of playing, of the ensemble's file", examples = "brushes")
        @Size(max = 64)
        @Nullable String variant,
    @Schema(description = "How it is played; loud where left out") @Nullable Dynamic dynamic,
    @Schema(description = "On top of the ensemble's offset, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb,
    @Valid @Nullable ToldLevel toldLevel,
    @Schema(description = "Another place than the ensemble's") @Valid
        @Nullable Coordinates positionM,
    @Schema(description = "Where the source faces instead, degrees", examples = "-90")
        @DecimalMin("-180")
        @DecimalMax("180")
        @Nullable Double facingAzimuthDeg) {

  /** A player as the ensemble has it. */
  static Playing asWritten(String player) {
    return new Playing(player, null, null, null, null, null, null, null, null);
  }
}
