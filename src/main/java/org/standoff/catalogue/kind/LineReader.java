package org.standoff.catalogue.kind;

import org.standoff.acoustics.HighPass;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.Pad;
import org.standoff.chain.PadPosition;
import org.standoff.chain.Powering;

/** Reads what microphones, direct boxes and preamps have in common. */
final class LineReader {

  private static final int DB_PER_OCTAVE_AND_ORDER = 6;

  private LineReader() {}

  static Powering powering(Sheet powering) {
    return new Powering(
        powering.word("need", Powering.Need::ofId), powering.optionalNumber("current_ma"));
  }

  static Pad pad(Sheet pad) {
    return new Pad(pad.number("pad_db"), pad.word("position", PadPosition::ofId));
  }

  static HighPass highPass(Sheet filter) {
    return new HighPass(
        filter.number("corner_hz"), filter.whole("slope_db_per_octave") / DB_PER_OCTAVE_AND_ORDER);
  }
}
