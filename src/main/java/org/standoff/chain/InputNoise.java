package org.standoff.chain;

import java.util.List;
import org.standoff.acoustics.Level;

/**
 * Equivalent input noise of a preamp, unweighted, 20 Hz to 20 kHz, at 20 °C.
 *
 * @param sourceOhm resistance at the input while it was measured, in ohm; the figure contains its
 *     thermal noise
 * @param points the noise at one or more gains, by rising gain
 */
public record InputNoise(double sourceOhm, List<Point> points) {

  /**
   * One measured point.
   *
   * @param gainDb gain, in dB
   * @param einDbu equivalent input noise, in dBu
   */
  public record Point(double gainDb, double einDbu) {}

  public InputNoise {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a preamp's noise needs at least one point");
    }
    points = points.stream().sorted((a, b) -> Double.compare(a.gainDb(), b.gainDb())).toList();
  }

  /** Equivalent input noise at a gain, in dBu: straight between the points, constant outside. */
  public double einDbu(double gainDb) {
    Point before = points.get(0);
    if (gainDb <= before.gainDb()) {
      return before.einDbu();
    }
    for (Point after : points.subList(1, points.size())) {
      if (gainDb <= after.gainDb()) {
        double part = (gainDb - before.gainDb()) / (after.gainDb() - before.gainDb());
        return before.einDbu() + part * (after.einDbu() - before.einDbu());
      }
      before = after;
    }
    return before.einDbu();
  }

  /**
   * Noise of the amplifier alone, in dBu: the measured figure less the thermal noise of the
   * resistance it was measured with.
   *
   * @param gainDb gain, in dB
   * @return −∞ where the figure is not above that thermal noise, which no amplifier can do: see
   *     {@link #contradictsPhysics(double)}
   */
  public double amplifierDbu(double gainDb) {
    double rest = Level.powerRatio(einDbu(gainDb)) - Level.powerRatio(ThermalNoise.dbu(sourceOhm));
    return rest > 0 ? Level.ofPowerRatio(rest) : Double.NEGATIVE_INFINITY;
  }

  /** Whether the figure at a gain lies at or under the thermal noise that it must contain. */
  public boolean contradictsPhysics(double gainDb) {
    return amplifierDbu(gainDb) == Double.NEGATIVE_INFINITY;
  }
}
