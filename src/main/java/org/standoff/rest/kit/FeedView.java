package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the feed.
 *
 * @param events what happened
 * @param next where to go on
 * @param more whether there is more already
 */
@Schema(name = "Feed", description = "A stretch of what happened, in an order that never changes")
public record FeedView(
    @Schema(description = "What happened, as much of it as the caller may see")
        List<Happened> events,
    @Schema(
            description =
                "What to send as after the next time; it moves on although the caller may see"
                    + " nothing of a stretch",
            examples = "4711-12")
        String next,
    @Schema(description = "Whether there is more already; if not, ask again later") boolean more) {

  /** Something that happened. */
  @Schema(name = "Event", description = "Something that happened")
  @JsonInclude(JsonInclude.Include.NON_EMPTY)
  public record Happened(
      @Schema(description = "Its place in the feed; never the same twice") String cursor,
      @Schema(description = "When, by the clock of the database") Instant at,
      @Schema(
              description =
                  "What: house-added, house-changed, kit-changed, hold- and a state, hold-extended,"
                      + " hold-changed, hold-hit (a late return), hold-unit-changed (the state or"
                      + " the matched group of a promised unit is another); more may come",
              examples = "hold-confirmed")
          String kind,
      @Schema(description = "Id of the house whose kit it is about") @Nullable String house,
      @Schema(description = "Where the hold is that it is about") @Nullable String hold,
      @Schema(
              description =
                  "Figures and names that belong to it: added_count, changed_count and retired_count"
                      + " of kit-changed; house, serial and ready_at of hold-hit; house, serial, state"
                      + " and matched_group, as they are now, of hold-unit-changed")
          Map<String, Object> detail) {}
}
