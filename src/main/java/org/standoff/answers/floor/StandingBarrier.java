package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A barrier that stands somewhere. */
@Schema(description = "A barrier that stands somewhere, upright on the floor")
public record StandingBarrier(
    @Schema(description = "The barrier, or its id", examples = "boathouse/gobo") @NotNull
        JsonNode barrier,
    @Schema(description = "Where it stands") @NotNull @Valid BarrierPlace place) {}
