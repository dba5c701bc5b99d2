package org.standoff.rest.kit;

import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Which part of a diary is wanted.
 *
 * @param from its beginning
 * @param to its end, which does not belong to it
 */
@Schema(name = "DiaryQuery", description = "Which part of a diary is wanted")
public record DiaryQuery(
    @Schema(description = "Beginning of the part", examples = "2027-06-01T00:00:00Z") @NotNull
        Instant from,
    @Schema(
            description = "End of the part, which does not belong to it",
            examples = "2027-07-01T00:00:00Z")
        @NotNull
        Instant to) {}
