package org.standoff.chain;

import java.util.Optional;

/**
 * How a microphone and its line are set.
 *
 * @param outputId which output of the body is used
 * @param pattern the pattern, with its figures
 * @param filter the high-pass in use, if any
 * @param pad the microphone's pad, {@link Pad#OUT} for none
 * @param inLinePadDb attenuation of a pad in the lead, in dB, 0 for none
 * @param preampPadDb attenuation of the preamp's pad, in dB, 0 for none
 */
public record Settings(
    String outputId,
    PatternFigures pattern,
    Optional<Filter> filter,
    Pad pad,
    double inLinePadDb,
    double preampPadDb) {

  /** All attenuation of the line, in dB. */
  public double totalPadDb() {
    return pad.padDb() + inLinePadDb + preampPadDb;
  }

  public Settings withFilter(Optional<Filter> other) {
    return new Settings(outputId, pattern, other, pad, inLinePadDb, preampPadDb);
  }

  public Settings withPad(Pad other) {
    return new Settings(outputId, pattern, filter, other, inLinePadDb, preampPadDb);
  }

  public Settings withInLinePadDb(double otherDb) {
    return new Settings(outputId, pattern, filter, pad, otherDb, preampPadDb);
  }

  public Settings withPreampPadDb(double otherDb) {
    return new Settings(outputId, pattern, filter, pad, inLinePadDb, otherDb);
  }
}
