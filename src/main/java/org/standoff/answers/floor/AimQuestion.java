package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.floor.BleedMatrix;

/** How are microphones best aimed against all their neighbours at once? */
@Schema(
    description =
        "Within limits: aims, patterns, places and a barrier that make the unwanted level least"
            + " while the wanted loses at most so much, over all neighbours at once, in three"
            + " dimensions.")
public record AimQuestion(
    @NotNull @Valid AskedFloor floor,
    @Schema(description = "Reflections up to this order; 1 where left out", examples = "1")
        @Min(0)
        @Max(BleedMatrix.HIGHEST_ORDER)
        @Nullable Integer order,
    @Schema(
            description = "Microphones to aim; all that are there for a source where left out",
            examples = "[\"violin\"]")
        @Size(min = 1, max = 64)
        @Nullable List<@NotNull @Size(max = 64) String> microphones,
    @Schema(description = "Limits of every microphone; any direction where left out") @Valid
        @Nullable AimRange limits,
    @Schema(description = "Limits of single microphones in place of these, by their name")
        @Size(max = 64)
        @Nullable Map<@Size(max = 64) String, @NotNull @Valid AimRange> limitsOf,
    @Schema(
            description = "What a source counts more (or less) than its level, in dB, by its name",
            examples = "{\"drums\": 6}")
        @Size(max = 300)
        @Nullable Map<@Size(max = 64) String, @NotNull @DecimalMin("-60") @DecimalMax("60") Double>
            weightsDb,
    @Schema(description = "A barrier that may be put up, or its id", examples = "boathouse/gobo")
        @Nullable JsonNode barrier,
    @Schema(description = "Where it may stand; it goes to the best of these, or to none")
        @Size(max = 16)
        @Nullable List<@NotNull @Valid BarrierPlace> barrierPlaces) {}
