package org.standoff.answers.floor;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Coordinates;
import org.standoff.floor.BleedMatrix;

/** What does a day on this floor do to the ears at each seat? */
@Schema(
    description =
        "What does a day on this floor do to the ears at each seat? An estimate with its range, each"
            + " published rule for itself; no measurement and no statement of compliance.")
public record ExposureQuestion(
    @NotNull @Valid AskedFloor floor,
    @Schema(description = "Reflections up to this order; 1 where left out", examples = "1")
        @Min(0)
        @Max(BleedMatrix.HIGHEST_ORDER)
        @Nullable Integer order,
    @Schema(description = "Where ears are") @NotNull @Size(min = 1, max = 300)
        List<@NotNull @Valid EarSeat> seats,
    @Schema(description = "The day, playing only") @NotNull @Size(min = 1, max = 64)
        List<@NotNull @Valid PlayedHours> day) {

  /** Where somebody's ears are. */
  @Schema(description = "Where somebody's ears are")
  public record EarSeat(
      @Schema(description = "What the seat is called", examples = "violinist")
          @NotNull
          @Size(min = 1, max = 64)
          String id,
      @Schema(description = "Between the ears") @NotNull @Valid Coordinates positionM) {}

  /** A stretch of the day. */
  @Schema(description = "A stretch of the day in which some sources sound")
  public record PlayedHours(
      @Schema(description = "What it is", examples = "loud pieces")
          @NotNull
          @Size(min = 1, max = 100)
          String title,
      @Schema(description = "Hours of playing", examples = "2.5")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("24")
          Double hours,
      @Schema(
              description = "Sources that sound; all of the floor where left out",
              examples = "[\"drums\"]")
          @Size(max = 300)
          @Nullable List<@NotNull @Size(max = 64) String> sounding,
      @Schema(
              description = "How much louder than on the floor some play, in dB, by their name",
              examples = "{\"drums\": -14}")
          @Size(max = 300)
          @Nullable
              Map<@Size(max = 64) String, @NotNull @DecimalMin("-80") @DecimalMax("40") Double>
              louderDb) {}
}
