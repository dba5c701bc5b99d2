package org.standoff.answers;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.Point3;

/** A place, told as ensemble files tell it. */
@Schema(description = "A place: x right, y front, z up, each in m")
public record Coordinates(
    @Schema(description = "To the right, in m", examples = "9.1")
        @NotNull
        @DecimalMin("-200")
        @DecimalMax("200")
        Double x,
    @Schema(description = "To the front, in m", examples = "6.7")
        @NotNull
        @DecimalMin("-200")
        @DecimalMax("200")
        Double y,
    @Schema(description = "Up, in m", examples = "2")
        @NotNull
        @DecimalMin("-200")
        @DecimalMax("200")
        Double z) {

  public static Coordinates of(Point3 point) {
    return new Coordinates(point.xM(), point.yM(), point.zM());
  }

  public Point3 point() {
    return new Point3(x, y, z);
  }
}
