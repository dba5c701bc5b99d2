package org.standoff.rest.kit;

import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.hold.CheckedIn;
import org.standoff.rest.http.FormOfState;

/**
 * What came of a return.
 *
 * @param hold as it stands now
 * @param hits whom a late return hits
 */
@Schema(name = "CheckedIn", description = "What came of a return")
public record CheckedInView(
    @Schema(description = "The hold as it stands now") HoldView hold,
    @Schema(description = "Holds that have to wait for a unit which came back late")
        List<Hit> hits) {

  /** A hold that a late return hits. */
  @Schema(name = "Hit", description = "A hold that has to wait for a unit which came back late")
  public record Hit(
      @Schema(description = "Id of that hold") String hold,
      @Schema(description = "The desk that holds") String desk,
      @Schema(description = "The desk's own name for it") String reference,
      @Schema(description = "Id of the house") String house,
      @Schema(description = "Serial number of the unit that is late") String serial,
      @Schema(description = "From when that hold has it") Instant busyFrom,
      @Schema(description = "Until when, turn-round counted") Instant busyTo) {

    static Hit of(CheckedIn.Hit hit) {
      return new Hit(
          hit.hold().toString(),
          hit.desk(),
          hit.reference(),
          hit.conflict().house(),
          hit.conflict().serial(),
          hit.conflict().from(),
          hit.conflict().to());
    }
  }

  static FormOfState tagged(CheckedIn in) {
    HoldView hold = HoldView.of(in.hold());
    return new FormOfState(
        hold.etag(), new CheckedInView(hold, in.hits().stream().map(Hit::of).toList()));
  }
}
