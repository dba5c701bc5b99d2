package org.standoff.answers.floor;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** How far a microphone may be turned, switched and moved. */
@Schema(description = "How far a microphone may be turned, switched and moved")
public record AimRange(
    @Schema(description = "Azimuth from here, degrees; −180", examples = "-60")
        @DecimalMin("-360")
        @DecimalMax("360")
        @Nullable Double azimuthFromDeg,
    @Schema(description = "to the left up to here, degrees; 180", examples = "60")
        @DecimalMin("-360")
        @DecimalMax("360")
        @Nullable Double azimuthToDeg,
    @Schema(description = "Lowest elevation, degrees; −90", examples = "-60")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double elevationFromDeg,
    @Schema(description = "Highest elevation, degrees; 90", examples = "30")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double elevationToDeg,
    @Schema(description = "How far the capsule may leave its place, m; 0", examples = "0.3")
        @DecimalMin("0")
        @DecimalMax("3")
        @Nullable Double reachM,
    @Schema(description = "Whether its other patterns may be used; no where left out")
        @Nullable Boolean switchPattern,
    @Schema(description = "Wanted sound that may be lost, in dB; 1", examples = "1")
        @DecimalMin("0")
        @DecimalMax("20")
        @Nullable Double wantedLossDb) {

  /** Any direction from where it stands. */
  static final AimRange ANY = new AimRange(null, null, null, null, null, null, null);
}
