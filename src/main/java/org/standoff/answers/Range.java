package org.standoff.answers;

import org.standoff.acoustics.UncertainDb;

/**
 * An uncertain figure: 5th, 50th and 95th percentile of a normal in dB.
 *
 * @param low 5th percentile
 * @param typical 50th percentile
 * @param high 95th percentile
 */
public record Range(double low, double typical, double high) {
  public static Range of(UncertainDb figure) {
    return new Range(figure.low(), figure.typical(), figure.high());
  }
}
