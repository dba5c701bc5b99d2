package org.standoff.answers.stereo;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Microphones of one model that may be used. */
@Schema(description = "Microphones of one model that may be used")
public record MicrophonesAtHand(
    @Schema(description = "The model", examples = "core/sdc-card-1") @NotNull JsonNode microphone,
    @Schema(description = "How many there are; 2 where left out", examples = "2") @Min(1) @Max(100)
        @Nullable Integer count,
    @Schema(description = "Whether they are a matched group; false where left out")
        @Nullable Boolean matched) {}
