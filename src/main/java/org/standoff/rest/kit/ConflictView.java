package org.standoff.rest.kit;

import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.hold.Conflict;

/** A unit that somebody else has, or will. */
@Schema(name = "UnitConflict", description = "A unit that another hold has in the time wanted")
public record ConflictView(
    @Schema(description = "Id of the house") String house,
    @Schema(description = "Serial number of the unit") String serial,
    @Schema(description = "From when the other hold has it") Instant busyFrom,
    @Schema(description = "Until when, turn-round counted") Instant busyTo) {

  static ConflictView of(Conflict conflict) {
    return new ConflictView(conflict.house(), conflict.serial(), conflict.from(), conflict.to());
  }
}
