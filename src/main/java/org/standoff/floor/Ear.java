package org.standoff.floor;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Polar;

/** A pattern with its aim, ready to weigh what arrives. Rejection ends at the cap. */
final class Ear {
  private final double aimX;
  private final double aimY;
  private final double aimZ;
  private final double[] omniPart;
  private final double[] efficiency;
  private final boolean flat;
  private final boolean halfSpace;
  private final double leastEnergy;

  Ear(FloorPattern pattern, Direction aim, double rejectionCapDb) {
    aimX = aim.x();
    aimY = aim.y();
    aimZ = aim.z();
    flat = pattern.omniPartPerOctave().isEmpty();
    halfSpace = pattern.polar().halfSpace();
    leastEnergy = Level.powerRatio(-rejectionCapDb);
    omniPart = new double[Octave.COUNT];
    efficiency = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      Polar polar = pattern.in(octave);
      omniPart[octave.ordinal()] = polar.omniPart();
      efficiency[octave.ordinal()] = polar.randomEnergyEfficiency();
    }
  }

  private Ear(Ear like, Direction aim) {
    aimX = aim.x();
    aimY = aim.y();
    aimZ = aim.z();
    flat = like.flat;
    halfSpace = like.halfSpace;
    leastEnergy = like.leastEnergy;
    omniPart = like.omniPart;
    efficiency = like.efficiency;
  }

  /** The same pattern, aimed elsewhere. */
  Ear aimed(Direction aim) {
    return new Ear(this, aim);
  }

  /** Cosine of the angle off the axis of a place that lies {@code distanceM} away. */
  double cosOffAxis(double dx, double dy, double dz, double distanceM) {
    return (dx * aimX + dy * aimY + dz * aimZ) / distanceM;
  }

  /** A boundary hides what comes from behind it. */
  boolean hears(double cos) {
    return !halfSpace || cos >= 0;
  }

  /** Signed pressure in one octave re the axis, before the cap. */
  double pressure(int octave, double cos) {
    return omniPart[octave] + (1 - omniPart[octave]) * cos;
  }

  /** Share of energy heard in one octave. */
  double energy(int octave, double cos) {
    double pressure = pressure(octave, cos);
    return Math.max(pressure * pressure, leastEnergy);
  }

  /** Random-energy efficiency in one octave. */
  double efficiency(int octave) {
    return efficiency[octave];
  }

  /** Adds what is heard of {@code arriving} to {@code heard}. */
  void hear(double cos, double[] arriving, double[] heard) {
    if (flat) {
      double share = energy(0, cos);
      for (int i = 0; i < heard.length; i++) {
        heard[i] += arriving[i] * share;
      }
    } else {
      for (int i = 0; i < heard.length; i++) {
        heard[i] += arriving[i] * energy(i, cos);
      }
    }
  }
}
