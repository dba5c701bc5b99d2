package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.SourceSide;
import org.standoff.answers.Coordinates;

/** A microphone that stands somewhere. */
@Schema(
    description =
        "A microphone that stands somewhere. Aim it at a source, or by azimuth and elevation; where"
            + " neither is given it looks at the first source that it is there for.")
public record StandingMicrophone(
    @Schema(description = "What it is called on this floor", examples = "violin")
        @NotNull
        @Size(min = 1, max = 64)
        String id,
    @Schema(
            description = "The microphone, or its id; a bare ideal pattern where left out",
            examples = "boathouse/sdc-card-1")
        @Nullable JsonNode microphone,
    @Schema(description = "Which output of a mid-side body; the first", examples = "mid")
        @Size(max = 16)
        @Nullable String output,
    @Schema(description = "Pattern in use; the microphone's first where left out")
        @Nullable PatternName pattern,
    @Schema(description = "What a bare pattern could be switched to") @Size(max = 7)
        @Nullable List<@NotNull PatternName> otherPatterns,
    @Schema(description = "Where its capsule is") @NotNull @Valid Coordinates positionM,
    @Schema(description = "Source at whose reference point it looks", examples = "violin")
        @Size(max = 64)
        @Nullable String aimAt,
    @Schema(description = "Where its axis points, degrees", examples = "45")
        @DecimalMin("-180")
        @DecimalMax("180")
        @Nullable Double azimuthDeg,
    @Schema(description = "How far it points up, degrees; 0 beside an azimuth", examples = "-30")
        @DecimalMin("-90")
        @DecimalMax("90")
        @Nullable Double elevationDeg,
    @Schema(description = "Gain in the mix, in dB; 0 where left out", examples = "0")
        @DecimalMin("-120")
        @DecimalMax("40")
        @Nullable Double faderDb,
    @Schema(
            description = "Sources that it is there for; none for a microphone for the room",
            examples = "[\"violin\"]")
        @Size(max = 32)
        @Nullable List<@NotNull @Size(max = 64) String> wanted,
    @Schema(
            description =
                "Which side of what moves it looks at: opposite for the under side of a drum or the"
                    + " back of an open cabinet; reference where left out")
        @Nullable SourceSide side) {}
