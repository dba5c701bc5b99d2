package org.standoff.acoustics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Ten figures, one per {@link Octave}: levels in dB, absorption coefficients, areas, gains. */
public final class Octaves {
  private final double[] values;

  private Octaves(double[] values) {
    this.values = values;
  }

  /**
   * Ten figures, lowest band first.
   *
   * @throws IllegalArgumentException when there are not ten, or one is NaN
   */
  public static Octaves of(double... ten) {
    if (ten.length != Octave.COUNT) {
      throw new IllegalArgumentException(
          "expected " + Octave.COUNT + " octave figures, found " + ten.length);
    }
    for (double figure : ten) {
      if (Double.isNaN(figure)) {
        throw new IllegalArgumentException("an octave figure must be a number");
      }
    }
    return new Octaves(ten.clone());
  }

  /** The same figure in every band. */
  public static Octaves filled(double figure) {
    double[] ten = new double[Octave.COUNT];
    Arrays.fill(ten, figure);
    return of(ten);
  }

  public double get(Octave octave) {
    return values[octave.ordinal()];
  }

  /** Applies {@code change} to each figure. */
  public Octaves map(DoubleUnaryOperator change) {
    return of(Arrays.stream(values).map(change).toArray());
  }

  /** A copy, lowest band first. */
  public double[] toArray() {
    return values.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Octaves octaves && Arrays.equals(values, octaves.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
