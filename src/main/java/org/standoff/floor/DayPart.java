package org.standoff.floor;

import java.util.Map;

/**
 * A stretch of the day in which some sources sound.
 *
 * @param title the name for people
 * @param hours ≥ 0, playing only
 * @param soundingDb per source id, how much louder than on the floor plan it plays, in dB; a source
 *     that is missing is silent
 */
public record DayPart(String title, double hours, Map<String, Double> soundingDb) {
  public DayPart {
    if (!(hours >= 0 && hours <= 24)) {
      throw new IllegalArgumentException("a part of a day lasts 0 to 24 h, not " + hours);
    }
    soundingDb = Map.copyOf(soundingDb);
  }
}
