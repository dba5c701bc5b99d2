package org.standoff.pairs;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A measure of a layout that may be chosen; 0 where a layout doesn't have it. */
public enum Parameter {
  /** Distance between the left and the right capsule, in m. */
  SPACING("spacing_m"),
  /** Angle between the left and the right axis, in degrees. */
  ANGLE("angle_deg"),
  /** How far a centre capsule stands in front of the bar, in m. */
  FORWARD("forward_m"),
  /** Amplitude at which the side signal enters the matrix, mid being 1. */
  SIDE_GAIN("side_gain"),
  /** Diameter of the disc between the capsules, in m. */
  DISC_DIAMETER("disc_diameter_m");

  private static final List<Parameter> ALL = List.of(values());

  private final String id;

  Parameter(String id) {
    this.id = id;
  }

  /** The name in files and answers. */
  public String id() {
    return id;
  }

  public static List<Parameter> all() {
    return ALL;
  }

  public static Optional<Parameter> ofId(String id) {
    return Arrays.stream(values()).filter(parameter -> parameter.id.equals(id)).findFirst();
  }
}
