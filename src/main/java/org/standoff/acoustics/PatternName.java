package org.standoff.acoustics;

import java.util.Arrays;
import java.util.Optional;

/**
 * The trade's words for patterns, each with the coefficient that is meant when a data sheet gives
 * only the word. The coefficient, not the word, decides the arithmetic.
 */
public enum PatternName {
  OMNI("omni", 1, false),
  /** No single definition: 0.7 and 0.75 are both in use; 0.7 is taken (common practice). */
  WIDE_CARDIOID("wide-cardioid", 0.7, false),
  CARDIOID("cardioid", 0.5, false),
  /** Greatest front share of a diffuse field, A = (√3 − 1)/2 (Heller 2011, derived there). */
  SUPERCARDIOID("supercardioid", (Math.sqrt(3) - 1) / 2, false),
  /** Least share of a diffuse field. */
  HYPERCARDIOID("hypercardioid", 0.25, false),
  FIGURE_8("figure-8", 0, false),
  /** A boundary microphone: omnidirectional over the half of space that it faces. */
  HALF_OMNI("half-omni", 1, true);

  private final String id;
  private final Polar ideal;

  PatternName(String id, double omniPart, boolean halfSpace) {
    this.id = id;
    this.ideal = new Polar(omniPart, halfSpace);
  }

  /** The name in files and answers. */
  public String id() {
    return id;
  }

  /** The first-order pattern meant by the bare word. */
  public Polar ideal() {
    return ideal;
  }

  public static Optional<PatternName> ofId(String id) {
    return Arrays.stream(values()).filter(name -> name.id.equals(id)).findFirst();
  }
}
