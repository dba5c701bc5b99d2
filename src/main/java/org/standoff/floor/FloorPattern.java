package org.standoff.floor;

import java.util.Optional;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;

/**
 * A pattern as a microphone on the floor has it.
 *
 * @param name what the switch says; the coefficient decides the arithmetic
 * @param polar first-order pattern at mid frequencies
 * @param omniPartPerOctave the coefficient per octave in [0, 1], where known
 */
public record FloorPattern(PatternName name, Polar polar, Optional<Octaves> omniPartPerOctave) {

  /** The pattern meant by the bare word, the same in every octave. */
  public static FloorPattern ideal(PatternName name) {
    return new FloorPattern(name, name.ideal(), Optional.empty());
  }

  /** The pattern in one octave: its own coefficient where known, else that of mid frequencies. */
  public Polar in(Octave octave) {
    return omniPartPerOctave
        .map(parts -> new Polar(parts.get(octave), polar.halfSpace()))
        .orElse(polar);
  }
}
