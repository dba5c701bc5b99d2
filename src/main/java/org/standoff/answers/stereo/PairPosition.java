package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Coordinates;
import org.standoff.pairs.PairPlace;

/** Where a pair stands and looks. */
@Schema(description = "Where the pair stands and looks, in the room")
public record PairPosition(
    @Schema(description = "Middle of the pair; z is its height") @NotNull @Valid
        Coordinates positionM,
    @Schema(
            description =
                "Where the pair looks: 0 is the room's front (+y), positive to the left; 0 where"
                    + " it is left out",
            examples = "-90")
        @DecimalMin("-360")
        @DecimalMax("360")
        @Nullable Double facingAzimuthDeg,
    @Schema(description = "How far it looks down; 0 where it is left out", examples = "0")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double tiltDownDeg) {

  static PairPosition of(PairPlace place) {
    return new PairPosition(
        Coordinates.of(place.middle()), place.facingAzimuthDeg(), place.tiltDownDeg());
  }

  PairPlace place() {
    return new PairPlace(
        positionM.point(),
        facingAzimuthDeg == null ? 0 : facingAzimuthDeg,
        tiltDownDeg == null ? 0 : tiltDownDeg);
  }
}
