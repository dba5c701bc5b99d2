package org.standoff.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Proximity;
import org.standoff.acoustics.Validity;

/** Where a microphone is so near to a source that its level is less sure. */
final class NearField {
  private static final double NOTICEABLE_RISE_DB = 3;

  private NearField() {}

  static List<Validity> validity(
      FloorMicrophone microphone, FloorSource source, double pathM, double speedMPerS) {
    List<Validity> found = new ArrayList<>();
    String where = microphone.id() + " at " + source.id() + ": ";
    for (Validity doubt : source.radiator().validity(pathM, source.highestHz(), speedMPerS)) {
      found.add(new Validity(doubt.code(), where + doubt.detail()));
    }
    double risesBelowHz =
        Proximity.frequencyOfRiseHz(
            microphone.pattern().polar(),
            source.radiator().effectiveDistanceM(pathM),
            NOTICEABLE_RISE_DB,
            speedMPerS);
    if (risesBelowHz > Octave.HZ_125.lowerHz()) {
      found.add(
          new Validity(
              "proximity-not-counted",
              String.format(
                  Locale.ROOT,
                  "%sthe pattern rises by 3 dB or more below %.0f Hz, which bleed does not count",
                  where,
                  risesBelowHz)));
    }
    return found;
  }
}
