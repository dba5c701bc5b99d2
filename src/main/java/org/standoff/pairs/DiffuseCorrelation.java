package org.standoff.pairs;

import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;

/**
 * Correlation of two channels in a diffuse field, in closed form for any two first-order capsules
 * anywhere in space. With responses a + g·u, distance vector d = d·n and x = kd, the mean over the
 * sphere of (a₁ + g₁·u)(a₂ + g₂·u) cos(x n·u) is
 *
 * <pre>a₁a₂ j₀ + g₁·g₂ (j₀ + j₂)/3 − (g₁·n)(g₂·n) j₂</pre>
 *
 * over the root of both mean squares. Derived from ∫ uuᵀ e^(jx n·u); for two equal horizontal
 * capsules it is [A² j₀ + B² (cos²(α/2)(j₀ + j₂) − sin²(α/2)(j₀ − 2j₂))/3]/REE, and for omnis sin
 * x/x (Cook et al., JASA 27, 1955). 1 is the same signal, 0 none in common, −1 the same turned
 * over. A disc between the capsules isn't counted.
 */
public final class DiffuseCorrelation {
  private static final double HIGHEST_HZ = Octave.HZ_16K.upperHz();
  private static final int STEPS_TO_HIGHEST = 2000;

  private final Pickup one;
  private final Pickup other;
  private final double speedMPerS;

  private DiffuseCorrelation(Pickup one, Pickup other, double speedMPerS) {
    this.one = one;
    this.other = other;
    this.speedMPerS = speedMPerS;
  }

  /** Between left and right. */
  public static DiffuseCorrelation of(PairHearing hearing) {
    return between(hearing, Channel.LEFT, Channel.RIGHT);
  }

  /**
   * Between two channels.
   *
   * @throws IllegalArgumentException when the pair hasn't got one of them
   */
  public static DiffuseCorrelation between(PairHearing hearing, Channel one, Channel other) {
    return new DiffuseCorrelation(
        pickup(hearing.pickups(), one), pickup(hearing.pickups(), other), hearing.speedMPerS());
  }

  /** In [−1, 1] for a tone-wide band at {@code hz} ≥ 0. */
  public double at(double hz) {
    Point3 from = one.position();
    Point3 to = other.position();
    double distanceM = from.distanceToM(to);
    double x = 2 * Math.PI * hz / speedMPerS * distanceM;
    double j0 = SphericalBessel.j0(x);
    double j2 = SphericalBessel.j2(x);
    double mean =
        one.omni() * other.omni() * j0 + dot(one.gradient(), other.gradient()) * (j0 + j2) / 3;
    if (distanceM > 0) {
      Point3 n =
          new Point3(
              (to.xM() - from.xM()) / distanceM,
              (to.yM() - from.yM()) / distanceM,
              (to.zM() - from.zM()) / distanceM);
      mean -= dot(one.gradient(), n) * dot(other.gradient(), n) * j2;
    }
    return mean / Math.sqrt(one.sphereMean() * other.sphereMean());
  }

  /** At the exact midband of each octave. */
  public Octaves perOctave() {
    return Octaves.of(Octave.all().stream().mapToDouble(octave -> at(octave.midHz())).toArray());
  }

  /** Lowest frequency at which it is 0, up to the highest octave's edge; empty when none is. */
  public OptionalDouble firstZeroHz() {
    double start = at(0);
    double step = HIGHEST_HZ / STEPS_TO_HIGHEST;
    for (double hz = step; hz <= HIGHEST_HZ; hz += step) {
      if (at(hz) * start < 0) {
        return OptionalDouble.of(Crossing.between(f -> at(f) * start <= 0, hz - step, hz));
      }
    }
    return OptionalDouble.empty();
  }

  /** Level of the mono sum of the two in the diffuse field re two independent signals, in dB. */
  public Octaves monoGainDb() {
    double even = (one.sphereMean() + other.sphereMean()) / 2;
    double share = Math.sqrt(one.sphereMean() * other.sphereMean()) / even;
    return perOctave()
        .map(rho -> Math.max(Level.ofPowerRatio(Math.max(1 + rho * share, 0)), MonoSum.FLOOR_DB));
  }

  private static Pickup pickup(List<Pickup> all, Channel channel) {
    return all.stream()
        .filter(pickup -> pickup.channel() == channel)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the pair has no channel " + channel.id()));
  }

  private static double dot(Point3 a, Point3 b) {
    return a.xM() * b.xM() + a.yM() * b.yM() + a.zM() * b.zM();
  }
}
