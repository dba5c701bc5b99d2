package org.standoff.answers.settings;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;
import org.standoff.advice.LinePhantom;
import org.standoff.answers.ToldLevel;
import org.standoff.answers.kit.AvailableIn;

/**
 * Which microphone, pattern, pad, filter and gain, for this source, this far away? The record is
 * flat and wide because scripts ask it as a query string; everything but source and preamp may be
 * left out.
 */
@Schema(
    description =
        "Which microphone, pattern, pad, filter and gain for this source, this far away? A"
            + " reference (source, microphone, preamp, room, style) is an id or the item itself in"
            + " the form of its catalogue file.")
public record SettingsQuestion(
    @Schema(description = "The source", examples = "core/snare") @NotNull JsonNode source,
    @Schema(
            description = "Placement at the source; the only one where it is left out",
            examples = "top")
        @Size(max = 64)
        @Nullable String placement,
    @Schema(description = "How it is played; loud where it is left out") @Nullable Dynamic dynamic,
    @Schema(description = "Offset on all levels of the catalogue, in dB", examples = "0")
        @DecimalMin("-60")
        @DecimalMax("40")
        @Nullable Double levelOffsetDb,
    @Valid @Nullable ToldLevel toldLevel,
    @Schema(
            description =
                "From the source's reference point to the capsule, in m; where the catalogue's"
                    + " level holds where it is left out",
            examples = "0.05")
        @DecimalMin("0.005")
        @DecimalMax("100")
        @Nullable Double distanceM,
    @Schema(description = "Half of the range the distance ends up in, in m", examples = "0.01")
        @DecimalMin("0")
        @DecimalMax("10")
        @Nullable Double distanceSpreadM,
    @Schema(description = "How far off the source's axis it stands, 0..180°", examples = "0")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double angleDeg,
    @Schema(description = "How far off its own axis it hears the source, 0..180°", examples = "0")
        @DecimalMin("0")
        @DecimalMax("180")
        @Nullable Double aimOffDeg,
    @Valid @Nullable SecondMicrophone secondMicrophone,
    @Schema(
            description = "Other placements of the source that are in use",
            examples = "[\"under\"]")
        @Size(max = 8)
        @Nullable List<@NotNull @Size(max = 64) String> companions,
    @Schema(description = "What the player doubles on, on the same input") @Size(max = 4)
        @Nullable List<@NotNull @Valid DoubledSource> doubles,
    @Schema(description = "One microphone", examples = "core/ldc-multi-1")
        @Nullable JsonNode microphone,
    @Schema(description = "Several microphones to rank", examples = "[\"core/dyn-card-1\"]")
        @Size(min = 1, max = 200)
        @Nullable List<@NotNull JsonNode> microphones,
    @Schema(
            description =
                "All microphones of a pack; all of the catalogue where neither this nor"
                    + " microphones are given",
            examples = "core")
        @Size(max = 64)
        @Nullable String pack,
    @Schema(
            description =
                "Choose only from microphones of which enough units are free in a period: one, or"
                    + " two with second_microphone")
        @Valid
        @Nullable AvailableIn available,
    @Schema(description = "Preamp and converter", examples = "core/preamp-16") @NotNull
        JsonNode preamp,
    @Schema(description = "Pads for the lead that are at hand, in dB", examples = "[20]")
        @Size(max = 4)
        @Nullable List<@NotNull @DecimalMin("1") @DecimalMax("60") Double> inLinePadsDb,
    @Schema(description = "Phantom on this line: on, off, or free to choose (where left out)")
        @Nullable LinePhantom phantom,
    @Schema(description = "The room; the style's where it is left out", examples = "core/live-room")
        @Nullable JsonNode room,
    @Schema(description = "Other sources that the microphone hears") @Size(max = 32)
        @Nullable List<@NotNull @Valid NeighbourSource> neighbours,
    @Schema(
            description =
                "Everything else at the microphone as one diffuse level, rms, dB re 20 µPa; the"
                    + " style's where neither this nor neighbours are given",
            examples = "85")
        @DecimalMin("0")
        @DecimalMax("150")
        @Nullable Double neighbourLevelDbSpl,
    @Schema(description = "Noise of the room, dB(A); the room's where left out", examples = "25")
        @DecimalMin("-10")
        @DecimalMax("100")
        @Nullable Double backgroundNoiseDba,
    @Schema(description = "Temperature, °C; the room's where left out", examples = "20")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double temperatureC,
    @Schema(description = "Relative humidity, per cent", examples = "50")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double relativeHumidityPercent,
    @Schema(description = "House style; core/house-default where left out")
        @Nullable JsonNode style,
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
    @Valid @Nullable Stand stand,
    @Schema(description = "Given settings to compare side by side, on the one microphone")
        @Size(max = 8)
        @Nullable List<@NotNull @Valid GivenSettings> settings,
    @Schema(description = "How many microphones to explain; 5 where left out", examples = "5")
        @Min(1)
        @Max(50)
        @Nullable Integer limit) {

  /** How many microphones are explained where the question does not say. */
  public static final int USUAL_LIMIT = 5;
}
