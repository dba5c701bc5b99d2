package org.standoff.rest.kit;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.stock.KitUnit;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/**
 * All units of a house.
 *
 * @param units each once
 */
@Schema(name = "KitTold", description = "All units of a house; what is left out is retired")
public record KitTold(
    @Schema(
            description = "Each unit once, by its serial number",
            implementation = KitUnitTold[].class)
        @NotNull
        @Size(max = KitTold.MOST_UNITS)
        List<@Valid @NotNull UnitTold> units) {

  static final int MOST_UNITS = 200_000;

  private static final int MOST_FAULTS = 100;

  /**
   * The units.
   *
   * @throws InvalidRequest where one has no serial number
   */
  List<KitUnit> kit() {
    List<KitUnit> kit = new ArrayList<>(units.size());
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < units.size() && faults.size() < MOST_FAULTS; i++) {
      UnitTold told = units.get(i);
      if (told.serial() == null) {
        faults.add(
            Fault.atPointer(
                "/units/" + i + "/serial", FaultCode.MISSING, "A unit has a serial number."));
      } else {
        kit.add(told.unit(told.serial()));
      }
    }
    if (!faults.isEmpty()) {
      throw new InvalidRequest(faults);
    }
    return kit;
  }
}
