package org.standoff.pairs.fit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.standoff.pairs.Crossing;
import org.standoff.pairs.ParameterRange;

/**
 * Turns one knob after the other until a figure reaches what was wished: the first that reaches it
 * alone settles it; one that can't goes where it comes nearest, and the next helps. Each knob is
 * looked at in {@value #STEPS} steps, so a wish that is met only between two of them is missed.
 */
final class Solver {
  /** A figure counts as the wished one within this, in its unit: rounding, not taste. */
  private static final double MET_WITHIN = 1e-6;

  private static final int STEPS = 24;

  private final ToDoubleFunction<Setting> figure;
  private final double wished;

  Solver(ToDoubleFunction<Setting> figure, double wished) {
    this.figure = figure;
    this.wished = wished;
  }

  /** Where the figure is the wished one, or comes nearest to it. */
  Setting solve(Setting start, List<Knob> knobs) {
    Setting setting = start;
    for (Knob knob : knobs) {
      if (isMet(setting)) {
        return setting;
      }
      setting = turn(knob, setting);
    }
    return setting;
  }

  private boolean isMet(Setting setting) {
    return Math.abs(miss(setting)) <= MET_WITHIN;
  }

  /** The crossing nearest to where the knob stands; without one the step that misses least. */
  private Setting turn(Knob knob, Setting setting) {
    ParameterRange range = knob.range();
    double from = knob.read(setting);
    OptionalDouble crossing = OptionalDouble.empty();
    double best = from;
    double bestMiss = Math.abs(miss(setting));
    double before = range.least();
    boolean wasReached = isReached(knob.turned(setting, before));
    for (int step = 0; step <= STEPS; step++) {
      double value = range.least() + (range.most() - range.least()) * step / STEPS;
      double miss = miss(knob.turned(setting, value));
      if (Math.abs(miss) < bestMiss) {
        best = value;
        bestMiss = Math.abs(miss);
      }
      boolean reached = miss >= -MET_WITHIN / 2;
      if (reached != wasReached) {
        double at =
            reached ? cross(knob, setting, before, value) : cross(knob, setting, value, before);
        if (crossing.isEmpty() || Math.abs(at - from) < Math.abs(crossing.getAsDouble() - from)) {
          crossing = OptionalDouble.of(at);
        }
      }
      wasReached = reached;
      before = value;
    }
    return knob.turned(setting, crossing.orElse(best));
  }

  private double cross(Knob knob, Setting setting, double without, double with) {
    return Crossing.between(value -> isReached(knob.turned(setting, value)), without, with);
  }

  private boolean isReached(Setting setting) {
    return miss(setting) >= -MET_WITHIN / 2;
  }

  private double miss(Setting setting) {
    return figure.applyAsDouble(setting) - wished;
  }
}
