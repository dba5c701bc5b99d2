package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
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

/** A source that stands somewhere. */
@Schema(description = "A source that stands somewhere")
public record StandingSource(
    @Schema(description = "What it is called on this floor", examples = "second-trumpet")
        @NotNull
        @Size(min = 1, max = 64)
        String id,
    @Schema(description = "The source, or its id", examples = "core/trumpet") @NotNull
        JsonNode source,
    @Schema(
            description = "Placement whose radiator and spectrum count; the first that has a law",
            examples = "spot")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "Where its reference point is") @NotNull @Valid Coordinates positionM,
    @Schema(
            description = "Where it faces, degrees; where left out it radiates alike to all sides",
            examples = "90")
        @DecimalMin("-180")
        @DecimalMax("180")
        @Nullable Double facingAzimuthDeg,
    @Schema(description = "How far it faces up, degrees; 0 where left out", examples = "0")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double facingElevationDeg,
    @Schema(description = "How it is played; loud where left out") @Nullable Dynamic dynamic,
    @Schema(description = "Offset on all of its levels, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb,
    @Valid @Nullable ToldLevel toldLevel) {}
