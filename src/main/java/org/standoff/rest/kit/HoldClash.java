package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.hold.HoldState;

/**
 * What stands in the way of a hold or of a step, beside the usual members of a problem; those that
 * don't apply are absent.
 *
 * @param shortfalls lines that can't be met
 * @param conflicts units that others have
 * @param state how the hold stands
 * @param reference that the desk gave to another hold
 * @param hold the hold that has the reference
 */
@Schema(
    name = "HoldClash",
    description =
        "What stands in the way of a hold or of a step, beside the usual members of a problem")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HoldClash(
    @Schema(description = "Each line that can't be met, where units are short")
        @Nullable List<ShortfallView> shortfalls,
    @Schema(description = "Each unit that others have in the time wanted")
        @Nullable List<ConflictView> conflicts,
    @Schema(description = "How the hold stands, where it does not take the step")
        @Nullable HoldState state,
    @Schema(description = "The reference, where the desk gave it to another hold")
        @Nullable String reference,
    @Schema(description = "Where the hold is that has the reference already")
        @Nullable String hold) {

  static HoldClash of(List<ShortfallView> shortfalls) {
    return new HoldClash(shortfalls, null, null, null, null);
  }

  static HoldClash ofUnits(List<ConflictView> conflicts) {
    return new HoldClash(null, conflicts, null, null, null);
  }

  static HoldClash of(HoldState state) {
    return new HoldClash(null, null, state, null, null);
  }

  static HoldClash ofReference(String reference, String hold) {
    return new HoldClash(null, null, null, reference, hold);
  }
}
