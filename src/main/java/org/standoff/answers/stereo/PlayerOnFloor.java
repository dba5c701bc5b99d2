package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.answers.Coordinates;

/** A player by a place in the room. */
@Schema(description = "A player by a place in the room")
public record PlayerOnFloor(
    @Schema(description = "Name of the player in the answer", examples = "trumpet")
        @NotNull
        @Size(min = 1, max = 64)
        String id,
    @Schema(description = "Where the sound starts") @NotNull @Valid Coordinates positionM) {}
