package org.standoff.answers.settings;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;

/** Another source that the microphone hears. */
@Schema(description = "Another source that the microphone hears, direct and through the room.")
public record NeighbourSource(
    @Schema(description = "Id of the source, or the source itself", examples = "core/hi-hat")
        @NotNull
        JsonNode source,
    @Schema(
            description = "Placement whose level counts; the first where it is left out",
            examples = "spot")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "From its reference point to the capsule, in m", examples = "0.5")
        @NotNull
        @DecimalMin("0.005")
        @DecimalMax("200")
        Double distanceM,
    @Schema(description = "How far off the microphone's axis it lies, 0..180°", examples = "120")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("180")
        Double angleDeg,
    @Schema(
            description = "How far off the neighbour's own axis the microphone lies, 0..180°",
            examples = "60")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double sourceAngleDeg,
    @Schema(description = "How it is played; loud where left out") @Nullable Dynamic dynamic,
    @Schema(description = "Offset on all of its levels, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb) {}
