package org.standoff.answers.settings;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;

/** Another source on the same input, one at a time. */
@Schema(description = "Another source that the player doubles on, one at a time, same input.")
public record DoubledSource(
    @Schema(description = "Id of the source, or the source itself", examples = "core/flute")
        @NotNull
        JsonNode source,
    @Schema(description = "Placement; the only one where it is left out", examples = "spot")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "Distance, in m; the question's where left out", examples = "0.4")
        @DecimalMin("0.005")
        @DecimalMax("100")
        @Nullable Double distanceM,
    @Schema(description = "How it is played; loud where left out") @Nullable Dynamic dynamic,
    @Schema(description = "Offset on all of its levels, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb) {}
