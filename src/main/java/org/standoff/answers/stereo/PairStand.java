package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Coordinates;

/** Where the stand of a pair may be. */
@Schema(
    description =
        "Where the pair may be: at position_m, or within distance_m of the middle of the players,"
            + " on a line straight back from where it looks")
public record PairStand(
    @Schema(description = "The place, where it is settled; z is the height") @Valid
        @Nullable Coordinates positionM,
    @Schema(description = "How far from the middle of the players, horizontally, in m") @Valid
        @Nullable DistanceRange distanceM,
    @Schema(
            description =
                "Where the pair looks: 0 is the room's front (+y), positive to the left; towards"
                    + " the middle of the players where position_m is given, to the front elsewhere",
            examples = "-90")
        @DecimalMin("-360")
        @DecimalMax("360")
        @Nullable Double facingAzimuthDeg,
    @Schema(
            description =
                "Of the pair, in m; that of the players where neither this nor a position",
            examples = "2")
        @DecimalMin("-5")
        @DecimalMax("50")
        @Nullable Double heightM,
    @Schema(description = "How far it looks down; 0 where it is left out", examples = "0")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double tiltDownDeg) {

  /** From least to most; the usual one is kept as near as may be. */
  @Schema(description = "A range of distances in m; least and most are the usual one if left out")
  public record DistanceRange(
      @Schema(description = "Nearest, in m", examples = "1.5") @DecimalMin("0.1") @DecimalMax("100")
          @Nullable Double least,
      @Schema(description = "Where it would stand, in m; the mean where left out", examples = "2.5")
          @DecimalMin("0.1")
          @DecimalMax("100")
          @Nullable Double usual,
      @Schema(description = "Farthest, in m", examples = "4") @DecimalMin("0.1") @DecimalMax("100")
          @Nullable Double most) {}
}
