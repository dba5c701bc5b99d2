package org.standoff.acoustics;

/**
 * Which side of the moving part a placement looks at. What moves away from one side moves towards
 * the other, so a microphone on the opposite side is a candidate for inverted polarity well below
 * the frequency where the paths differ by half a wave (common practice).
 */
public enum SourceSide {
  REFERENCE("reference"),
  OPPOSITE("opposite");

  private final String id;

  SourceSide(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }
}
