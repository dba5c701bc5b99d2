package org.standoff.answers.floor;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.floor.Barrier;
import org.standoff.floor.PlacedBarrier;

/** Where a barrier stands. */
@Schema(description = "Where a barrier stands: the middle of its foot, and where one face looks")
public record BarrierPlace(
    @Schema(description = "To the right, in m", examples = "4.2")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("300")
        Double xM,
    @Schema(description = "To the front, in m", examples = "4.4")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("300")
        Double yM,
    @Schema(description = "Where one of its faces looks, degrees", examples = "-90")
        @NotNull
        @DecimalMin("-180")
        @DecimalMax("180")
        Double facingAzimuthDeg) {

  PlacedBarrier of(Barrier barrier) {
    return new PlacedBarrier(barrier, xM, yM, facingAzimuthDeg);
  }

  static BarrierPlace of(PlacedBarrier placed) {
    return new BarrierPlace(placed.xM(), placed.yM(), placed.facingAzimuthDeg());
  }
}
