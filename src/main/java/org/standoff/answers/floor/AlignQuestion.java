package org.standoff.answers.floor;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Coordinates;

/** When does one source reach several microphones, and what is to be done about it? */
@Schema(
    description =
        "When does one source reach several microphones: delays, polarity, notches of their mono"
            + " sum, delay strategies side by side, and how exactly to put them back.")
public record AlignQuestion(
    @NotNull @Valid AskedFloor floor,
    @Schema(description = "Source of the floor whose arrivals count", examples = "violin")
        @NotNull
        @Size(max = 64)
        String source,
    @Schema(
            description = "Microphones of the floor to lay against each other; all where left out",
            examples = "[\"violin\", \"room-left\"]")
        @Size(min = 1, max = 64)
        @Nullable List<@NotNull @Size(max = 64) String> microphones,
    @Schema(
            description =
                "Those of them that others are laid against: overheads or a room pair, the left one"
                    + " first; strategies are told only with a pair",
            examples = "[\"room-left\", \"room-right\"]")
        @Size(min = 1, max = 2)
        @Nullable List<@NotNull @Size(max = 64) String> pair,
    @Schema(
            description =
                "A place that both of a pair should be equally far from, such as the snare")
        @Valid
        @Nullable Coordinates equalPathFromM,
    @Schema(description = "Sample rate, Hz; 48000 where left out", examples = "48000")
        @DecimalMin("8000")
        @DecimalMax("768000")
        @Nullable Double sampleRateHz,
    @Schema(
            description = "By how much the pair shall lead in the third strategy, ms; 10",
            examples = "10")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double extraMs,
    @Schema(
            description = "Coldest it gets that day, °C; the floor's where left out",
            examples = "12")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double coldestC,
    @Schema(
            description = "Warmest it gets that day, °C; the floor's where left out",
            examples = "21")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double warmestC) {}
