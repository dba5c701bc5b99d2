package org.standoff.answers;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.Point3;

/** A place that was computed: it may lie beyond what can be told as {@link Coordinates}. */
@Schema(description = "A computed place: x right, y front, z up, each in m")
public record Position(
    @Schema(description = "To the right, in m", examples = "9.1") double x,
    @Schema(description = "To the front, in m", examples = "6.7") double y,
    @Schema(description = "Up, in m", examples = "2") double z) {

  public static Position of(Point3 point) {
    return new Position(point.xM(), point.yM(), point.zM());
  }
}
