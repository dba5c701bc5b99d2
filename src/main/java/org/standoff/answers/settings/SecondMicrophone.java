package org.standoff.answers.settings;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Where the second microphone of a pair stands; both get one gain. */
@Schema(description = "Where the second microphone of a pair stands; both get one gain.")
public record SecondMicrophone(
    @Schema(
            description = "From the source's reference point to its capsule, in m",
            examples = "1.2")
        @NotNull
        @DecimalMin("0.005")
        @DecimalMax("100")
        Double distanceM,
    @Schema(description = "How far off the source's axis it stands, 0..180°", examples = "0")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double angleDeg,
    @Schema(description = "How far off its own axis it hears the source, 0..180°", examples = "55")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double aimOffDeg) {}
