package org.standoff.rest.kit;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.Texts;

/**
 * What comes back.
 *
 * @param units serial numbers; all that are out where left out
 */
@Schema(name = "ReturnTold", description = "What comes back")
public record ReturnTold(
    @Schema(
            description =
                "Serial numbers of the units that are back; all that are out where left out")
        @Size(min = 1, max = 2500)
        List<@NotNull @Size(max = 64) @Pattern(regexp = Texts.ONE_LINE) String> units) {

  static final ReturnTold ALL = new ReturnTold(null);

  Set<String> serials() {
    return units == null ? Set.of() : Set.copyOf(units);
  }
}
