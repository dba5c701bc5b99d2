package org.standoff.rest.kit;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Which part of the feed is wanted.
 *
 * @param after the cursor to go on behind; from the beginning where left out
 * @param limit how many events are looked at
 */
@Schema(name = "EventQuery", description = "Which part of the feed is wanted")
public record EventQuery(
    @Schema(
            description =
                "The next of the answer before; where left out the feed begins at its beginning",
            examples = "0-0")
        @Size(max = 40)
        String after,
    @Schema(description = "How many events are looked at; 100 where left out", examples = "100")
        @Min(1)
        @Max(500)
        Integer limit) {

  static final int USUAL_LIMIT = 100;

  int most() {
    return limit == null ? USUAL_LIMIT : limit;
  }
}
