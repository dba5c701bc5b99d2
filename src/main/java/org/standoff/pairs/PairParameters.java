package org.standoff.pairs;

import java.util.Arrays;
import java.util.Map;

/** One value for each {@link Parameter}, 0 where none was given. Immutable. */
public final class PairParameters {
  /** All 0: capsules in one point that look the same way. */
  public static final PairParameters NONE = new PairParameters(new double[Parameter.all().size()]);

  private final double[] values;

  private PairParameters(double[] values) {
    this.values = values;
  }

  public static PairParameters of(Map<Parameter, Double> given) {
    PairParameters parameters = NONE;
    for (Map.Entry<Parameter, Double> entry : given.entrySet()) {
      parameters = parameters.with(entry.getKey(), entry.getValue());
    }
    return parameters;
  }

  public double get(Parameter parameter) {
    return values[parameter.ordinal()];
  }

  /**
   * The same but for one.
   *
   * @throws IllegalArgumentException when {@code value} isn't finite or is below 0
   */
  public PairParameters with(Parameter parameter, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          parameter.id() + " must be 0 or more and finite, not " + value);
    }
    double[] changed = values.clone();
    changed[parameter.ordinal()] = value;
    return new PairParameters(changed);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PairParameters parameters && Arrays.equals(values, parameters.values);
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
