package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.ParameterRange;

/**
 * One thing that may be turned to reach the wish.
 *
 * @param parameter of the layout; empty for the distance of the stand
 * @param range how far
 */
record Knob(Optional<Parameter> parameter, ParameterRange range) {
  /** What a solver may choose, in the order in which it costs least on the stand. */
  private static final List<Parameter> TURNABLE =
      List.of(Parameter.ANGLE, Parameter.SIDE_GAIN, Parameter.SPACING);

  /** The free measures of a layout; no spacing goes past the bar. */
  static List<Knob> ofLayout(PairLayout layout, double barMostM) {
    List<Knob> knobs = new ArrayList<>();
    for (Parameter parameter : TURNABLE) {
      ParameterRange range = layout.range(parameter);
      if (parameter == Parameter.SPACING) {
        range = range.atMost(barMostM);
      }
      if (range.isFree()) {
        knobs.add(new Knob(Optional.of(parameter), range));
      }
    }
    return List.copyOf(knobs);
  }

  double read(Setting setting) {
    return parameter.map(setting.measures()::get).orElse(setting.distanceM());
  }

  Setting turned(Setting setting, double value) {
    return parameter.isPresent()
        ? new Setting(setting.measures().with(parameter.get(), value), setting.distanceM())
        : new Setting(setting.measures(), value);
  }
}
