package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What does this room do, and what would material buy? Flat, for scripts. */
@Schema(
    description =
        "What does this room do, and what would some square metres of a material buy? A room and a"
            + " material (a barrier of it) are an id, or the item itself.")
public record RoomQuestion(
    @Schema(description = "The room", examples = "boathouse/hall") @NotNull JsonNode room,
    @Schema(
            description = "Absorbing material: a barrier of it; core/drape-heavy where left out",
            examples = "core/drape-heavy")
        @Nullable JsonNode material,
    @Schema(description = "Areas of it to try, m²", examples = "[60]") @Size(max = 16)
        @Nullable List<@NotNull @DecimalMin("0") @DecimalMax("100000") Double> materialAreaM2,
    @Schema(description = "Temperature, °C; the room's where left out", examples = "20")
        @DecimalMin("-20")
        @DecimalMax("50")
        @Nullable Double temperatureC,
    @Schema(description = "Relative humidity, per cent", examples = "50")
        @DecimalMin("0")
        @DecimalMax("100")
        @Nullable Double relativeHumidityPercent) {}
