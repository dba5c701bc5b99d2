package org.standoff.answers.settings;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.PatternName;

/** Settings that somebody has in mind. */
@Schema(description = "Settings that somebody has in mind; what is left out is out or the first.")
public record GivenSettings(
    @Schema(description = "Output of the body; the first where left out", examples = "main")
        @Size(max = 64)
        @Nullable String output,
    @Schema(description = "Pattern; the first of the output where left out")
        @Nullable PatternName pattern,
    @Schema(description = "Pad of the microphone, in dB; 0 is out", examples = "10")
        @DecimalMin("0")
        @DecimalMax("60")
        @Nullable Double padDb,
    @Schema(
            description = "Corner of the high-pass of microphone or preamp, in Hz; 0 is out",
            examples = "40")
        @DecimalMin("0")
        @DecimalMax("1000")
        @Nullable Double highPassHz,
    @Schema(description = "Pad in the lead, in dB; 0 is none", examples = "0")
        @DecimalMin("0")
        @DecimalMax("60")
        @Nullable Double inLinePadDb,
    @Schema(description = "Pad of the preamp, in dB; 0 is out", examples = "0")
        @DecimalMin("0")
        @DecimalMax("60")
        @Nullable Double preampPadDb,
    @Schema(description = "Gain, in dB; recommended where left out", examples = "20")
        @DecimalMin("-40")
        @DecimalMax("100")
        @Nullable Double gainDb) {}
