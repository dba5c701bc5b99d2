package org.standoff.advice;

import java.util.List;
import org.standoff.chain.Headrooms;
import org.standoff.chain.Reading;

/**
 * What settings do to the peaks: one reading a position, all at the same gain.
 *
 * @param readings at the typical peak, position by position
 * @param typical headroom at the typical peak, stage by stage the least of the positions
 * @param guarded the same at the guarded percentile
 */
public record Levels(List<Reading> readings, Headrooms typical, Headrooms guarded) {

  /** Whether something clips at the guarded percentile. */
  public boolean clips() {
    return guarded.leastDb() < 0;
  }

  /** The reading whose peak arrives highest. */
  public Reading loudest() {
    Reading loudest = readings.get(0);
    for (Reading reading : readings) {
      if (reading.peakDbfs() > loudest.peakDbfs()) {
        loudest = reading;
      }
    }
    return loudest;
  }
}
