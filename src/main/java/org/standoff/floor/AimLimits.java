package org.standoff.floor;

import java.util.List;
import java.util.Map;

/**
 * How far a microphone may be turned, switched and moved.
 *
 * @param azimuthFromDeg from here …
 * @param azimuthToDeg … to the left up to here, at most one turn
 * @param elevationFromDeg lowest, ≥ −90
 * @param elevationToDeg highest, ≤ 90
 * @param reachM how far the capsule may leave its place, ≥ 0
 * @param patterns what it may be switched to besides the pattern in use
 * @param wantedLossDb how much of the wanted sound may be lost against today's aim, ≥ 0
 * @param weightsDb what each unwanted source counts more (or less) than its level; 0 when missing
 */
public record AimLimits(
    double azimuthFromDeg,
    double azimuthToDeg,
    double elevationFromDeg,
    double elevationToDeg,
    double reachM,
    List<FloorPattern> patterns,
    double wantedLossDb,
    Map<String, Double> weightsDb) {
  /** The loss of wanted sound that passes unheard in a mix (common practice). */
  public static final double USUAL_WANTED_LOSS_DB = 1;

  public AimLimits {
    boolean azimuths = azimuthToDeg >= azimuthFromDeg && azimuthToDeg - azimuthFromDeg <= 360;
    boolean elevations =
        elevationFromDeg >= -90 && elevationToDeg >= elevationFromDeg && elevationToDeg <= 90;
    boolean amounts = reachM >= 0 && Double.isFinite(reachM) && wantedLossDb >= 0;
    if (!(azimuths && elevations && amounts)) {
      throw new IllegalArgumentException(
          "limits of an aim must be ordered, within one turn and 0 or more, not azimuth "
              + azimuthFromDeg
              + " to "
              + azimuthToDeg
              + "°, elevation "
              + elevationFromDeg
              + " to "
              + elevationToDeg
              + "°, reach "
              + reachM
              + " m, loss "
              + wantedLossDb
              + " dB");
    }
    patterns = List.copyOf(patterns);
    weightsDb = Map.copyOf(weightsDb);
  }

  /** Any direction from the same place, in the pattern in use. */
  public static AimLimits anyDirection(double wantedLossDb) {
    return new AimLimits(-180, 180, -90, 90, 0, List.of(), wantedLossDb, Map.of());
  }

  /** Degrees by which angles leave the limits, on the shorter way round; 0 inside. */
  double outsideDeg(double azimuthDeg, double elevationDeg) {
    double from = azimuthDeg - azimuthFromDeg;
    double turned = from - 360 * Math.floor(from / 360);
    double range = azimuthToDeg - azimuthFromDeg;
    double azimuth = turned <= range ? 0 : Math.min(turned - range, 360 - turned);
    double elevation =
        Math.max(Math.max(elevationFromDeg - elevationDeg, elevationDeg - elevationToDeg), 0);
    return azimuth + elevation;
  }

  double weightDb(FloorSource source) {
    return weightsDb.getOrDefault(source.id(), 0.0);
  }
}
