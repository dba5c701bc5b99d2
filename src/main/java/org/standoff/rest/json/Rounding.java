package org.standoff.rest.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/**
 * How exactly a figure is told, by the unit at the end of its name. Rounding happens here alone, at
 * the edge; everything within reckons in full.
 */
public enum Rounding {
  /** Levels and level differences: a hundredth of a decibel. */
  LEVEL(2),
  /** Lengths: a tenth of a millimetre. */
  LENGTH(4),
  /** Frequencies: a tenth of a hertz. */
  FREQUENCY(1),
  /** Angles: a hundredth of a degree. */
  ANGLE(2),
  /** Delays in milliseconds: a tenth of a microsecond. */
  DELAY(4),
  /** Times in seconds: a millisecond. */
  TIME(3),
  /** Shares of a hundred. */
  PERCENT(2),
  /** Probabilities. */
  PROBABILITY(4),
  /** Everything else: six significant digits. */
  SIGNIFICANT(-1);

  private static final MathContext SIX_DIGITS = new MathContext(6);

  /** Suffixes as they end a snake_case name, without the underscore. */
  private static final Map<String, Rounding> BY_UNIT =
      Map.ofEntries(
          Map.entry("db", LEVEL),
          Map.entry("dba", LEVEL),
          Map.entry("dbu", LEVEL),
          Map.entry("dbv", LEVEL),
          Map.entry("dbfs", LEVEL),
          Map.entry("spl", LEVEL),
          Map.entry("m", LENGTH),
          Map.entry("hz", FREQUENCY),
          Map.entry("deg", ANGLE),
          Map.entry("ms", DELAY),
          Map.entry("s", TIME),
          Map.entry("percent", PERCENT),
          Map.entry("pct", PERCENT),
          Map.entry("probability", PROBABILITY));

  private final double steps;

  Rounding(int decimals) {
    this.steps = Math.pow(10, decimals);
  }

  /** What the last word of a snake_case name asks for. */
  public static Rounding of(String name) {
    String unit = name.substring(name.lastIndexOf('_') + 1);
    return BY_UNIT.getOrDefault(unit, SIGNIFICANT);
  }

  /** The figure as it is told; NaN and infinities stay what they are. */
  public double apply(double value) {
    if (!Double.isFinite(value)) {
      return value;
    }
    if (this == SIGNIFICANT) {
      return new BigDecimal(value).round(SIX_DIGITS).doubleValue();
    }
    // plus zero: a negative zero would be written with its sign
    return Math.rint(value * steps) / steps + 0.0;
  }

  /**
   * The figure as a sheet or a script reads it: no exponent, no zeros at its end; empty for NaN and
   * infinities.
   */
  public String plain(double value) {
    if (!Double.isFinite(value)) {
      return "";
    }
    return BigDecimal.valueOf(apply(value)).stripTrailingZeros().toPlainString();
  }
}
