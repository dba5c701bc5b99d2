package org.standoff.pairs;

import java.util.Optional;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;

/**
 * A capsule of a layout whose measures are still open: its place is a share of them.
 *
 * @param channel what it feeds
 * @param spacings x over {@link Parameter#SPACING}: −½ for the left end of the bar
 * @param forwards y over {@link Parameter#FORWARD}
 * @param angles azimuth over {@link Parameter#ANGLE}: ½ for the left axis
 * @param aimDeg azimuth that doesn't depend on the angle, added to it
 * @param pattern fixed by the layout; empty when it may be chosen
 */
public record CapsulePlan(
    Channel channel,
    double spacings,
    double forwards,
    double angles,
    double aimDeg,
    Optional<PatternName> pattern) {

  /** The capsule for given measures. */
  public Capsule capsule(PairParameters parameters, Polar chosen) {
    return new Capsule(
        channel,
        new Point3(
            spacings * parameters.get(Parameter.SPACING),
            forwards * parameters.get(Parameter.FORWARD),
            0),
        new Direction(angles * parameters.get(Parameter.ANGLE) + aimDeg, 0),
        pattern.map(PatternName::ideal).orElse(chosen));
  }
}
