package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Which remedies to look for, and how far they may go. */
@Schema(description = "Which remedies to look for, and how far they may go")
public record AskedRemedies(
    @Schema(
            description = "Microphones to look for; all where left out, none for an empty list",
            examples = "[\"violin\"]")
        @Size(max = 300)
        @Nullable List<@NotNull @Size(max = 64) String> microphones,
    @Schema(
            description = "A barrier at hand, or its id; core/gobo-absorbing where left out",
            examples = "boathouse/gobo")
        @Nullable JsonNode barrier,
    @Schema(
            description =
                "Absorbing material at hand: a barrier of it, or its id; core/drape-heavy where left"
                    + " out",
            examples = "core/drape-heavy")
        @Nullable JsonNode material,
    @Schema(description = "How much of it, m²; 30 where left out", examples = "60")
        @DecimalMin("0")
        @DecimalMax("10000")
        @Nullable Double materialAreaM2,
    @Schema(description = "Wanted sound that a new aim may lose, in dB; 1", examples = "1")
        @DecimalMin("0")
        @DecimalMax("20")
        @Nullable Double wantedLossDb,
    @Schema(description = "Share of today's distance to try, 0.5", examples = "0.5")
        @DecimalMin("0.05")
        @DecimalMax("0.95")
        @Nullable Double closerShare,
    @Schema(description = "No nearer than this, in m; 0.05", examples = "0.05")
        @DecimalMin("0.005")
        @DecimalMax("10")
        @Nullable Double leastDistanceM,
    @Schema(description = "How much softer an offender might play, in dB; 6", examples = "6")
        @DecimalMin("0.5")
        @DecimalMax("40")
        @Nullable Double softerDb) {

  /** Nothing told. */
  static final AskedRemedies USUAL =
      new AskedRemedies(null, null, null, null, null, null, null, null);
}
