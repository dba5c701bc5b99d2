package org.standoff.rest.media;

import java.util.Locale;
import java.util.OptionalDouble;

/** Figures in the words of pictures. */
public final class Words {
  private static final char MINUS = '\u2212';

  private Words() {}

  /** A figure with a real minus sign. */
  public static String of(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    boolean zero = text.chars().allMatch(one -> one == '0' || one == '.');
    return value < 0 && !zero ? MINUS + text : text;
  }

  public static String degrees(double value) {
    return of(value, 1) + "°";
  }

  public static String degrees(OptionalDouble value) {
    return value.isPresent() ? degrees(value.getAsDouble()) : "none";
  }

  public static String metres(double value) {
    return of(value, 2) + " m";
  }

  public static String distance(OptionalDouble value) {
    return value.isPresent() ? metres(value.getAsDouble()) : "far";
  }

  /** A frequency as the trade writes it. */
  public static String hertz(double hz) {
    return hz >= 1000 ? of(hz / 1000, 1) + "k" : of(hz, 0);
  }

  /** The text, or its beginning where it is longer than {@code most} letters. */
  public static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1) + "…";
  }
}
