package org.standoff.answers;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A level that somebody told or measured; it takes the place of the catalogue's. */
@Schema(
    description =
        "A told or measured level of the source. Give peak_db_spl or level_db_spl; it takes the"
            + " place of the catalogue's level.")
public record ToldLevel(
    @Schema(description = "Highest instantaneous peak, dB re 20 µPa", examples = "121")
        @DecimalMin("0")
        @DecimalMax("190")
        @Nullable Double peakDbSpl,
    @Schema(description = "Long-term level while it plays, rms, dB re 20 µPa", examples = "98")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double levelDbSpl,
    @Schema(
            description =
                "Distance from the source's reference point at which it holds, in m; the"
                    + " question's distance where it is left out",
            examples = "1.0")
        @DecimalMin("0.005")
        @DecimalMax("100")
        @Nullable Double atM,
    @Schema(
            description =
                "Half of the range from the 5th to the 95th percentile, in dB; 3 for a told and 1"
                    + " for a measured level where it is left out (assumed)",
            examples = "3")
        @DecimalMin("0")
        @DecimalMax("30")
        @Nullable Double spreadDb,
    @Schema(description = "Whether it was measured, not told", examples = "false")
        @Nullable Boolean measured) {}
