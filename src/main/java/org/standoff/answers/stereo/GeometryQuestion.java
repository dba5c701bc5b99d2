package org.standoff.answers.stereo;

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

/**
 * What does this pair make of these sources? Flat where scripts ask it as a query string;
 * everything but the pair may be left out.
 */
@Schema(
    description =
        "What does this pair make of these sources? Give a pair (a layout by its id, or the layout"
            + " itself in the form of its catalogue file) with its measures, or capsules. Sources"
            + " come as azimuths with one distance, as a list, or as players of an ensemble; far"
            + " ones have no distance.")
public record GeometryQuestion(
    @Schema(description = "The layout; this or capsules", examples = "core/near-coincident-17-110")
        @Nullable JsonNode pair,
    @Schema(
            description = "Between left and right capsule, in m; the layout's usual one",
            examples = "0.17")
        @DecimalMin("0")
        @DecimalMax("10")
        @Nullable Double spacingM,
    @Schema(description = "Between left and right axis; the layout's usual one", examples = "110")
        @DecimalMin("0")
        @DecimalMax("360")
        @Nullable Double angleDeg,
    @Schema(
            description = "Of a centre capsule in front of the bar, in m; the layout's usual one",
            examples = "1.5")
        @DecimalMin("0")
        @DecimalMax("10")
        @Nullable Double forwardM,
    @Schema(
            description =
                "Amplitude at which the side signal enters the matrix, mid being 1; the layout's"
                    + " usual one",
            examples = "0.7")
        @DecimalMin("0")
        @DecimalMax("10")
        @Nullable Double sideGain,
    @Schema(
            description = "Of the disc between the capsules, in m; the layout's usual one",
            examples = "0.3")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable Double discDiameterM,
    @Schema(description = "Pattern of the layout's open capsules; its usual one")
        @Nullable PatternName pattern,
    @Schema(
            description = "Whose pattern coefficient and rejection cap count; else the bare word's",
            examples = "core/sdc-card-1")
        @Nullable JsonNode microphone,
    @Schema(description = "The capsules themselves, in place of a layout") @Size(min = 2, max = 3)
        @Nullable List<@NotNull @Valid GivenCapsule> capsules,
    @Schema(description = "Where the pair stands; needed where a source has a place in the room")
        @Valid
        @Nullable PairPosition place,
    @Schema(
            description = "Directions of sources as the pair sees them, positive to the left",
            examples = "[30, -30]")
        @Size(max = 100)
        @Nullable List<@NotNull @DecimalMin("-180") @DecimalMax("180") Double> azimuthDeg,
    @Schema(
            description =
                "Of these sources from the middle of the pair, in m; far away where left out",
            examples = "2.5")
        @DecimalMin("0.01")
        @DecimalMax("200")
        @Nullable Double distanceM,
    @Schema(description = "Sources, each by its own place or direction") @Size(max = 100)
        @Nullable List<@NotNull @Valid HeardSource> sources,
    @Schema(
            description = "Ensemble whose players are the sources",
            examples = "boathouse/saltlight-twelve")
        @Nullable JsonNode ensemble,
    @Schema(
            description = "Which of its players; all where left out",
            examples = "[\"trumpet\", \"alto\", \"trombone\"]")
        @Size(max = 100)
        @Nullable List<@NotNull @Size(max = 64) String> players,
    @Schema(
            description = "The room, for direct sound over late field; the ensemble's, or none",
            examples = "boathouse/hall")
        @Nullable JsonNode room,
    @Schema(description = "Temperature, °C; the room's where left out", examples = "20")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double temperatureC,
    @Schema(description = "Relative humidity, per cent", examples = "50")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double relativeHumidityPercent,
    @Schema(
            description = "Listening models, by id or inline; all of the catalogue where left out",
            examples = "[\"core/two-region\", \"core/straight-trade\"]")
        @Size(min = 1, max = 12)
        @Nullable List<@NotNull JsonNode> models,
    @Schema(
            description =
                "Model whose limit gives the recording angle that others are held against",
            examples = "core/limit-polyline")
        @Nullable JsonNode criterion,
    @Schema(description = "What to draw where a picture is asked for; the pair where left out")
        @Nullable StereoPicture picture) {}
