package org.standoff.answers.floor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/** Levels as an answer tells them: silence has none, and nothing is told of it. */
final class Told {
  private Told() {}

  /** The figure; empty where it is no number. */
  static OptionalDouble figure(double figure) {
    return Double.isFinite(figure) ? OptionalDouble.of(figure) : OptionalDouble.empty();
  }

  /** Figures by the octave's label, from low to high, without those that are no number. */
  static Map<String, Double> octaves(Octaves figures) {
    Map<String, Double> byLabel = new LinkedHashMap<>();
    for (Octave octave : Octave.all()) {
      figure(figures.get(octave)).ifPresent(figure -> byLabel.put(octave.label(), figure));
    }
    return byLabel;
  }
}
