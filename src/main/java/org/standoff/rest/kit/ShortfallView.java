package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.kit.AvailabilityAnswer;
import org.standoff.answers.kit.Substitute;

/**
 * A line that can't be met.
 *
 * @param pointer which line of the request
 * @param house that was asked
 * @param microphone that was wanted
 * @param quantity units that were wanted
 * @param matched whether as one matched group
 * @param freeCount most of them that could be had
 * @param shortPeriods when too few are there at once
 * @param freeFrom from when it can be had for as long
 * @param elsewhere what other houses have
 * @param substitutes what the house has that could stand in
 */
@Schema(name = "Shortfall", description = "A line that can't be met")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShortfallView(
    @Schema(description = "Which line of the request, as a JSON pointer", examples = "/lines/0")
        String pointer,
    @Schema(description = "Id of the house that was asked") String house,
    @Schema(description = "Id of the catalogue item that was wanted") String microphone,
    @Schema(description = "Units that were wanted") int quantity,
    @Schema(description = "Whether they had to be one matched group") boolean matched,
    @Schema(
            description =
                "Most of them that could be had for the whole period, once the lines before it had"
                    + " theirs")
        int freeCount,
    @Schema(description = "Hours of conflict: when too few are there at once, turn-round counted")
        List<AvailabilityAnswer.Stretch> shortPeriods,
    @Schema(
            description =
                "The first later collection in opening hours from which this line alone can be had for"
                    + " as long as it is wanted; absent where none is known")
        @Nullable OffsetDateTime freeFrom,
    @Schema(description = "What other houses have of it for the whole period")
        List<Elsewhere> elsewhere,
    @Schema(
            description =
                "What the house has free that could stand in, least lost first, with what is lost")
        List<Substitute> substitutes) {

  /** What another house has. */
  @Schema(name = "Elsewhere", description = "What another house has of a line")
  public record Elsewhere(
      @Schema(description = "Id of the house") String house,
      @Schema(
              description =
                  "Whether it could meet the line alone: false too where it is closed when the period"
                      + " begins, or ends and it has no drop-box")
          boolean enough,
      @Schema(description = "Units that it has free for the whole period") int freeCount) {}
}
