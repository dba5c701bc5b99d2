package org.standoff.answers.floor;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.floor.BleedMatrix;

/** What does every microphone hear of every source, and what can be done about it? */
@Schema(
    description = "What does every microphone hear of every source, and what can be done about it?")
public record BleedQuestion(
    @NotNull @Valid AskedFloor floor,
    @Schema(
            description =
                "Reflections computed one by one, up to this order; the late field says the rest."
                    + " 1 where left out",
            examples = "1")
        @Min(0)
        @Max(BleedMatrix.HIGHEST_ORDER)
        @Nullable Integer order,
    @Schema(description = "Whether levels are told per octave too", examples = "false")
        @Nullable Boolean octaves,
    @Valid @Nullable AskedRemedies remedies,
    @Schema(description = "What to draw where a picture is asked for; the plan where left out")
        @Nullable FloorPicture picture) {}
