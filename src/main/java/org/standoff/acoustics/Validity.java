package org.standoff.acoustics;

/**
 * A reason why a figure is less sure than it looks: a law used outside its range, or an assumption.
 *
 * @param code short name, lower case with hyphens, stable for programs
 * @param detail one sentence for people, with the figures
 */
public record Validity(String code, String detail) {
  /** What pattern and filter do to a peak can't be weighed without a spectrum. */
  public static final Validity PATTERN_RISE_NOT_COUNTED =
      new Validity(
          "pattern-rise-not-counted",
          "the spectrum is not known: what pattern and filter do to the peak is left out");
}
