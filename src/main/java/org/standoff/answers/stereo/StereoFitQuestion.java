package org.standoff.answers.stereo;

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
import org.standoff.acoustics.PatternName;
import org.standoff.answers.kit.AvailableIn;
import org.standoff.pairs.Technique;

/** Which pair spreads these players over the loudspeakers? */
@Schema(
    description =
        "Which pair spreads these players over the loudspeakers? Give players by their places, or"
            + " of an ensemble, or the width of a line of them; where the stand may be, and what is"
            + " wished.")
public record StereoFitQuestion(
    @Schema(description = "Players by their places; this, an ensemble, or width_m")
        @Size(min = 2, max = 24)
        @Nullable List<@NotNull @Valid PlayerOnFloor> players,
    @Schema(
            description = "Ensemble whose players are to be spread",
            examples = "boathouse/saltlight-twelve")
        @Nullable JsonNode ensemble,
    @Schema(
            description =
                "Which of its players; all where left out. The others are heard too, and told where"
                    + " their polarity turns",
            examples = "[\"trumpet\", \"alto\", \"trombone\"]")
        @Size(min = 2, max = 24)
        @Nullable List<@NotNull @Size(max = 64) String> playerIds,
    @Schema(description = "Width of a line of players across the pair's view, in m", examples = "3")
        @DecimalMin("0.1")
        @DecimalMax("100")
        @Nullable Double widthM,
    @Schema(description = "How many stand on that line; 3 where left out", examples = "3")
        @Min(2)
        @Max(24)
        @Nullable Integer playerCount,
    @Schema(description = "Other sources that the pair hears: only their polarity is looked at")
        @Size(max = 24)
        @Nullable List<@NotNull @Valid PlayerOnFloor> others,
    @Valid @NotNull PairStand stand,
    @Schema(
            description = "Longest spacing that the bar allows, in m; separate stands if left out",
            examples = "0.6")
        @DecimalMin("0")
        @DecimalMax("10")
        @Nullable Double barMostM,
    @Schema(description = "Techniques that may be used; all where left out") @Size(min = 1, max = 6)
        @Nullable List<@NotNull Technique> techniques,
    @Schema(
            description = "Layouts that may be used, by id or inline; all where left out",
            examples = "[\"core/near-coincident\", \"core/spaced-directional\"]")
        @Size(min = 1, max = 24)
        @Nullable List<@NotNull JsonNode> pairs,
    @Schema(
            description =
                "Patterns that may be used, the figure-8 of a side microphone included; all if left"
                    + " out")
        @Size(min = 1, max = 7)
        @Nullable List<@NotNull PatternName> patterns,
    @Schema(description = "Microphones at hand, best first; ideal ones where nothing is told")
        @Size(min = 1, max = 60)
        @Nullable List<@NotNull @Valid MicrophonesAtHand> microphones,
    @Schema(
            description = "All microphones of a pack, as many of each as needed, matched",
            examples = "core")
        @Size(max = 64)
        @Nullable String pack,
    @Schema(
            description =
                "Choose only from units that are free in a period; with microphones or a pack, or"
                    + " from all that the catalogue has")
        @Valid
        @Nullable AvailableIn available,
    @Valid @NotNull StereoWish wish,
    @Schema(
            description =
                "Listening models, by id or inline; measures are solved by the first that places"
                    + " images. All of the catalogue where left out",
            examples = "[\"core/two-region\", \"core/straight-trade\"]")
        @Size(min = 1, max = 12)
        @Nullable List<@NotNull JsonNode> models,
    @Schema(description = "The room; the ensemble's, or none", examples = "boathouse/hall")
        @Nullable JsonNode room,
    @Schema(description = "Temperature, °C; the room's where left out", examples = "20")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double temperatureC,
    @Schema(description = "Relative humidity, per cent", examples = "50")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double relativeHumidityPercent,
    @Schema(description = "How many solutions to explain; 5 where left out", examples = "5")
        @Min(1)
        @Max(50)
        @Nullable Integer limit,
    @Schema(
            description =
                "What to draw of the best where a picture is asked for; the pair if left out")
        @Nullable StereoPicture picture) {

  /** How many solutions are explained where the question does not say. */
  public static final int USUAL_LIMIT = 5;
}
