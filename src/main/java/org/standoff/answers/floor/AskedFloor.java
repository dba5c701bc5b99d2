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

/** What stands in a room; every question about a floor begins with it. */
@Schema(
    description =
        "What stands in a room: x right, y front, z up in m from a lower corner of its box; azimuth"
            + " 0 is front (+y), positive to the left. Sources are the players of an ensemble,"
            + " sources told one by one, or both.")
public record AskedFloor(
    @Schema(
            description = "The room, or its id; the ensemble's where left out",
            examples = "boathouse/hall")
        @Nullable JsonNode room,
    @Schema(
            description = "The ensemble that plays, or its id",
            examples = "boathouse/saltlight-twelve")
        @Nullable JsonNode ensemble,
    @Schema(
            description = "Which of its players are here; all where left out",
            examples = "[\"drums\", \"violin\"]")
        @Size(max = 300)
        @Nullable List<@NotNull @Size(max = 64) String> players,
    @Schema(description = "How players play where it is not as the ensemble says") @Size(max = 300)
        @Nullable List<@NotNull @Valid Playing> playing,
    @Schema(description = "Sources besides the ensemble's") @Size(max = 300)
        @Nullable List<@NotNull @Valid StandingSource> sources,
    @Schema(description = "The microphones") @Size(max = 300)
        @Nullable List<@NotNull @Valid StandingMicrophone> microphones,
    @Schema(description = "The barriers") @Size(max = 32)
        @Nullable List<@NotNull @Valid StandingBarrier> barriers,
    @Schema(description = "How sources radiate; as-described where left out")
        @Nullable Radiation radiation,
    @Schema(description = "Temperature, °C; the room's where left out", examples = "20")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double temperatureC,
    @Schema(description = "Relative humidity, per cent", examples = "50")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double relativeHumidityPercent) {

  /** Where it stands in a question. */
  static final String POINTER = "/floor";
}
