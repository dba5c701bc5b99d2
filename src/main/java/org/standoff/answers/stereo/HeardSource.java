package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Coordinates;

/** A source that the pair hears, by its place or as the pair sees it. */
@Schema(
    description =
        "A source that the pair hears: position_m in the room, or azimuth_deg as the pair sees it")
public record HeardSource(
    @Schema(description = "Name of the source in the answer", examples = "trumpet")
        @NotNull
        @Size(min = 1, max = 64)
        String id,
    @Schema(description = "Its place in the room; the pair then needs a place too") @Valid
        @Nullable Coordinates positionM,
    @Schema(
            description = "From where the pair looks, positive to the left, instead of a place",
            examples = "30")
        @DecimalMin("-180")
        @DecimalMax("180")
        @Nullable Double azimuthDeg,
    @Schema(description = "Above the pair's plane; 0 where left out", examples = "0")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double elevationDeg,
    @Schema(
            description = "From the middle of the pair, in m; far away where it is left out",
            examples = "2.5")
        @DecimalMin("0.01")
        @DecimalMax("200")
        @Nullable Double distanceM) {}
