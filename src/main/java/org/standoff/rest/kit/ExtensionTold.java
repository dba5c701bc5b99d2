package org.standoff.rest.kit;

import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Until when a hold is wanted.
 *
 * @param to the new end
 */
@Schema(name = "ExtensionTold", description = "Until when a hold is wanted")
public record ExtensionTold(
    @Schema(
            description =
                "The new end, RFC 3339 with offset: later than the present one, and at a time at"
                    + " which every house takes kit back",
            examples = "2027-06-15T09:00:00+02:00")
        @NotNull
        Instant to) {}
