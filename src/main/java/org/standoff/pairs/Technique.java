package org.standoff.pairs;

import java.util.Arrays;
import java.util.Optional;

/** The trade's families of stereo layouts. */
public enum Technique {
  COINCIDENT("coincident"),
  MID_SIDE("mid-side"),
  NEAR_COINCIDENT("near-coincident"),
  SPACED("spaced"),
  TREE("tree"),
  BAFFLED("baffled");

  private final String id;

  Technique(String id) {
    this.id = id;
  }

  /** The name in files and answers. */
  public String id() {
    return id;
  }

  public static Optional<Technique> ofId(String id) {
    return Arrays.stream(values()).filter(technique -> technique.id.equals(id)).findFirst();
  }
}
