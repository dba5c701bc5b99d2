package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.answers.Coordinates;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;

/** One capsule of a pair that stands in no catalogue. */
@Schema(description = "One capsule, in the pair's own axes: the middle of the pair is the origin")
public record GivenCapsule(
    @Schema(description = "What it feeds: left, right, centre; or mid and side") @NotNull
        Channel channel,
    @Schema(description = "From the middle of the pair; in the middle where it is left out") @Valid
        @Nullable Coordinates positionM,
    @Schema(description = "Where it looks, positive to the left; 0 where left out", examples = "55")
        @DecimalMin("-360")
        @DecimalMax("360")
        @Nullable Double azimuthDeg,
    @Schema(description = "How far it looks up; 0 where left out", examples = "0")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double elevationDeg,
    @Schema(description = "Pattern by its name; this or omni_part") @Nullable PatternName pattern,
    @Schema(
            description = "A of the first-order pattern A + (1 − A) cos: 0.5 is a cardioid",
            examples = "0.5")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable Double omniPart) {

  Capsule capsule(Polar polar) {
    return new Capsule(
        channel,
        positionM == null ? new Point3(0, 0, 0) : positionM.point(),
        new Direction(azimuthDeg == null ? 0 : azimuthDeg, elevationDeg == null ? 0 : elevationDeg),
        polar);
  }
}
