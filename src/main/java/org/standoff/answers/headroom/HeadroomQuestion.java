package org.standoff.answers.headroom;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;
import org.standoff.acoustics.PatternName;

/**
 * How much headroom does each stage keep at these settings? The level is told at the capsule, or
 * follows from a source and a distance. Flat, because scripts ask it as a query string.
 */
@Schema(
    description =
        "How much headroom does each stage keep at these settings? Give peak_db_spl at the"
            + " capsule, or source and distance_m. A reference (source, microphone, preamp) is an"
            + " id or the item itself in the form of its catalogue file.")
public record HeadroomQuestion(
    @Schema(
            description = "Highest instantaneous peak at the capsule, dB re 20 µPa",
            examples = "140")
        @DecimalMin("0")
        @DecimalMax("190")
        @Nullable Double peakDbSpl,
    @Schema(
            description =
                "Half of the range of that peak from the 5th to the 95th percentile, in dB; 0"
                    + " where it is left out",
            examples = "3")
        @DecimalMin("0")
        @DecimalMax("30")
        @Nullable Double spreadDb,
    @Schema(
            description =
                "Long-term level at the capsule while it plays, rms, dB re 20 µPa, for the signal"
                    + " to noise ratio",
            examples = "110")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double levelDbSpl,
    @Schema(description = "The source, in place of a level", examples = "core/snare")
        @Nullable JsonNode source,
    @Schema(description = "Placement; the only one where it is left out", examples = "top")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "How it is played; loud where it is left out") @Nullable Dynamic dynamic,
    @Schema(description = "Offset on all levels of the catalogue, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb,
    @Schema(
            description =
                "From the source's reference point to the capsule, in m; where the catalogue's"
                    + " level holds where it is left out",
            examples = "0.05")
        @DecimalMin("0.005")
        @DecimalMax("100")
        @Nullable Double distanceM,
    @Schema(description = "How far off the source's axis it stands, 0..180°", examples = "0")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double angleDeg,
    @Schema(description = "The microphone", examples = "core/ldc-multi-1") @NotNull
        JsonNode microphone,
    @Schema(description = "Preamp and converter", examples = "core/preamp-16") @NotNull
        JsonNode preamp,
    @Schema(description = "Output of the body; the first where left out", examples = "main")
        @Size(max = 64)
        @Nullable String output,
    @Schema(description = "Pattern; the first of the output where left out")
        @Nullable PatternName pattern,
    @Schema(description = "Pad of the microphone, in dB; 0 is out", examples = "10")
        @DecimalMin("0")
        @DecimalMax("60")
        @Nullable Double padDb,
    @Schema(description = "Corner of the high-pass, in Hz; 0 is out", examples = "40")
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
    @Schema(description = "Gain, in dB; recommended where it is left out", examples = "20")
        @DecimalMin("-40")
        @DecimalMax("100")
        @Nullable Double gainDb,
    @Schema(description = "Typical peak at the converter, dBFS; the style's", examples = "-10")
        @DecimalMin("-60")
        @DecimalMax("0")
        @Nullable Double targetPeakDbfs,
    @Schema(description = "Headroom wanted at the guarded percentile, dB; the style's")
        @DecimalMin("0")
        @DecimalMax("30")
        @Nullable Double wantedHeadroomDb,
    @Schema(description = "Percentile of the level that must not clip; the style's")
        @DecimalMin("50")
        @DecimalMax("99.99")
        @Nullable Double guardedPercentile,
    @Schema(description = "Noise of the room, dB(A); left out of the sum where not told")
        @DecimalMin("-10")
        @DecimalMax("100")
        @Nullable Double backgroundNoiseDba,
    @Schema(description = "House style; core/house-default where left out")
        @Nullable JsonNode style) {}
