package org.standoff.rest.kit;

import jakarta.validation.constraints.Size;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.stock.UnitFilter;
import org.standoff.kit.stock.UnitState;

/**
 * What a list of units is narrowed by.
 *
 * @param microphone only units of this catalogue item
 * @param state only units in this state; where left out, all but the retired
 */
@Schema(name = "UnitQuery", description = "What a list of units is narrowed by")
public record UnitQuery(
    @Schema(description = "Only units of this catalogue item") @Size(max = ItemId.LONGEST)
        String microphone,
    @Schema(description = "Only units in this state; where left out, all but the retired")
        UnitState state) {

  /** Whether nothing is left out but what was retired. */
  boolean keepsAll() {
    return microphone == null && state == null;
  }

  UnitFilter filter() {
    return new UnitFilter(Optional.ofNullable(microphone), Optional.ofNullable(state));
  }
}
