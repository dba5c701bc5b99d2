package org.standoff.acoustics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a source spreads its sound on the axis, as the place z comes nearer to its surface. Each law
 * turns z into the distance that the point law wants, so that the far field is common to all.
 */
public sealed interface Radiator {
  /** The name in files and answers. */
  String id();

  /** The source's radius a in metres. */
  double radiusM();

  /**
   * The distance to put into the point law, in metres.
   *
   * @param z distance from the reference point on the surface in metres, ≥ 0
   */
  double effectiveDistanceM(double z);

  /**
   * Proximity rise in dB of {@code pattern} at {@code z}, against its response to a plane wave.
   *
   * @param cosTheta cosine of the angle off the microphone's axis
   * @param z as in {@link #effectiveDistanceM}, above 0
   * @param hz frequency above 0
   * @param speedMPerS speed of sound
   */
  double proximityDb(Polar pattern, double cosTheta, double z, double hz, double speedMPerS);

  /** What makes the laws doubtful at {@code z} up to {@code highestHz}; empty when nothing does. */
  List<Validity> validity(double z, double highestHz, double speedMPerS);

  /**
   * Change of level in dB when the place moves on the axis, −20 lg(r(to)/r(from)); 0 for a shell.
   */
  default double levelChangeDb(double fromM, double toM) {
    return -Level.ofAmplitudeRatio(effectiveDistanceM(toM) / effectiveDistanceM(fromM));
  }

  /** The radiator that a file means; empty for an unknown name. */
  static Optional<Radiator> ofId(String id, double radiusM) {
    return switch (id) {
      case Point.ID -> Optional.of(new Point(radiusM));
      case Sphere.ID -> Optional.of(new Sphere(radiusM));
      case Piston.ID -> Optional.of(new Piston(radiusM));
      case IncoherentDisc.ID -> Optional.of(new IncoherentDisc(radiusM));
      case Shell.ID -> Optional.of(new Shell(radiusM));
      default -> Optional.empty();
    };
  }

  /**
   * A source so small that only the distance counts: r = z.
   *
   * @param radiusM nominal, kept as data; the law does not use it
   */
  record Point(double radiusM) implements Radiator {
    static final String ID = "point";

    public Point {
      RadiatorArguments.requireRadius(radiusM, 0);
    }

    @Override
    public String id() {
      return ID;
    }

    @Override
    public double effectiveDistanceM(double z) {
      return RadiatorArguments.requireDistance(z);
    }

    @Override
    public double proximityDb(
        Polar pattern, double cosTheta, double z, double hz, double speedMPerS) {
      return Proximity.riseDb(pattern, cosTheta, effectiveDistanceM(z), hz, speedMPerS);
    }

    @Override
    public List<Validity> validity(double z, double highestHz, double speedMPerS) {
      return List.of();
    }
  }

  /** A body or case of radius a about its acoustic centre: r = z + a. */
  record Sphere(double radiusM) implements Radiator {
    static final String ID = "sphere";

    public Sphere {
      RadiatorArguments.requireRadius(radiusM, Double.MIN_VALUE);
    }

    @Override
    public String id() {
      return ID;
    }

    @Override
    public double effectiveDistanceM(double z) {
      return RadiatorArguments.requireDistance(z) + radiusM;
    }

    @Override
    public double proximityDb(
        Polar pattern, double cosTheta, double z, double hz, double speedMPerS) {
      return Proximity.riseDb(pattern, cosTheta, effectiveDistanceM(z), hz, speedMPerS);
    }

    @Override
    public List<Validity> validity(double z, double highestHz, double speedMPerS) {
      return List.of();
    }
  }

  /**
   * A head, cone or bell that moves as one: p ∝ √(z² + a²) − z, so r = (z + √(z² + a²))/2, which is
   * a/2 at the surface and z far away. Derived from the axis field of a baffled piston (Kinsler and
   * Frey) at low ka; above ka = 1 it is the smooth trend only.
   */
  record Piston(double radiusM) implements Radiator {
    static final String ID = "piston";

    public Piston {
      RadiatorArguments.requireRadius(radiusM, Double.MIN_VALUE);
    }

    @Override
    public String id() {
      return ID;
    }

    @Override
    public double effectiveDistanceM(double z) {
      return (RadiatorArguments.requireDistance(z) + Math.hypot(z, radiusM)) / 2;
    }

    @Override
    public double proximityDb(
        Polar pattern, double cosTheta, double z, double hz, double speedMPerS) {
      return Proximity.pistonDb(pattern, cosTheta, radiusM, z, hz, speedMPerS);
    }

    @Override
    public List<Validity> validity(double z, double highestHz, double speedMPerS) {
      double zoneM = radiusM * radiusM * highestHz / speedMPerS;
      boolean large = 2 * Math.PI * highestHz / speedMPerS * radiusM > 1;
      return large && z < zoneM
          ? List.of(
              new Validity(
                  "piston-inside-interference-zone",
                  String.format(
                      Locale.ROOT,
                      "%.3g m is inside a²/λ = %.3g m at %.0f Hz, where the axis has maxima and"
                          + " minima: the law gives the smooth trend only",
                      z,
                      zoneM,
                      highestHz)))
          : List.of();
    }
  }

  /**
   * Many small sources over a disc (a soundboard, a section of players): r = a/√(ln(1 + a²/z²)).
   * Near the surface r goes to 0 only by the logarithm, so z is taken no smaller than 0.05 a.
   */
  record IncoherentDisc(double radiusM) implements Radiator {
    static final String ID = "incoherent-disc";
    private static final double LEAST_Z_OVER_RADIUS = 0.05;

    public IncoherentDisc {
      RadiatorArguments.requireRadius(radiusM, Double.MIN_VALUE);
    }

    @Override
    public String id() {
      return ID;
    }

    @Override
    public double effectiveDistanceM(double z) {
      double ratio = radiusM / offSurfaceM(RadiatorArguments.requireDistance(z));
      return radiusM / Math.sqrt(Math.log1p(ratio * ratio));
    }

    @Override
    public double proximityDb(
        Polar pattern, double cosTheta, double z, double hz, double speedMPerS) {
      return Proximity.riseDb(
          pattern,
          cosTheta,
          Proximity.discDistanceM(radiusM, offSurfaceM(RadiatorArguments.requireDistance(z))),
          hz,
          speedMPerS);
    }

    @Override
    public List<Validity> validity(double z, double highestHz, double speedMPerS) {
      return offSurfaceM(z) > z
          ? List.of(
              new Validity(
                  "disc-at-surface",
                  String.format(
                      Locale.ROOT,
                      "%.3g m is nearer than 0.05 of the radius: computed at %.3g m",
                      z,
                      offSurfaceM(z))))
          : List.of();
    }

    private double offSurfaceM(double z) {
      return Math.max(z, LEAST_Z_OVER_RADIUS * radiusM);
    }
  }

  /**
   * Inside a drum shell no spreading law holds: the level measured there stands for the whole range
   * of the placement, so r is the same everywhere, the shell's radius.
   */
  record Shell(double radiusM) implements Radiator {
    static final String ID = "shell";

    public Shell {
      RadiatorArguments.requireRadius(radiusM, Double.MIN_VALUE);
    }

    @Override
    public String id() {
      return ID;
    }

    @Override
    public double effectiveDistanceM(double z) {
      RadiatorArguments.requireDistance(z);
      return radiusM;
    }

    /** The piston's form with the shell's radius: an assumption, flagged. */
    @Override
    public double proximityDb(
        Polar pattern, double cosTheta, double z, double hz, double speedMPerS) {
      return Proximity.pistonDb(pattern, cosTheta, radiusM, z, hz, speedMPerS);
    }

    @Override
    public List<Validity> validity(double z, double highestHz, double speedMPerS) {
      return List.of(
          new Validity(
              "shell-flat-level",
              "inside a shell no spreading law holds: the level is the same over the placement"),
          new Validity(
              "shell-proximity-assumed",
              "inside a shell the proximity rise is assumed to be that of a piston of its radius"));
    }
  }
}
