package org.standoff.answers.kit;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Limits a choice of microphones to those that are free. */
@Schema(
    description =
        "Choose only from microphones of which units are free in a period. The answer then names"
            + " the kit's revision and must not be kept.")
public record AvailableIn(
    @Schema(
            description = "When they are collected, RFC 3339 with offset; belongs to the period",
            examples = "2027-06-11T10:00:00+02:00")
        @NotNull
        Instant from,
    @Schema(
            description =
                "When they come back, at most 366 days later; does not belong to the period",
            examples = "2027-06-14T11:00:00+02:00")
        @NotNull
        Instant to,
    @Schema(
            description = "Ids of the houses, at most 20; all where left out",
            examples = "[\"ostrel-hire\"]")
        @Size(min = 1, max = 20)
        @Nullable List<@NotNull @Size(max = 64) String> houses) {}
