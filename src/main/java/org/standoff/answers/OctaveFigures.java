package org.standoff.answers;

import java.util.LinkedHashMap;
import java.util.Map;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/** Figures per octave as an answer tells them: by the octave's label, from low to high. */
public final class OctaveFigures {
  private OctaveFigures() {}

  public static Map<String, Double> of(Octaves figures) {
    Map<String, Double> byLabel = new LinkedHashMap<>();
    Octave.all().forEach(octave -> byLabel.put(octave.label(), figures.get(octave)));
    return byLabel;
  }
}
