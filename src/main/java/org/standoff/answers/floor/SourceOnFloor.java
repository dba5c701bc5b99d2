package org.standoff.answers.floor;

import java.util.OptionalDouble;
import org.standoff.answers.Coordinates;
import org.standoff.floor.FloorSource;

/**
 * A source as it was resolved.
 *
 * @param id on this floor
 * @param title for people
 * @param source in the catalogue
 * @param placement whose radiator and spectrum count
 * @param positionM of its reference point
 * @param facingAzimuthDeg where it faces
 * @param facingElevationDeg how far up
 * @param soundPowerDb over all octaves, re 1 pW
 * @param crestDb peak over long-term level
 */
public record SourceOnFloor(
    String id,
    String title,
    String source,
    String placement,
    Coordinates positionM,
    double facingAzimuthDeg,
    double facingElevationDeg,
    double soundPowerDb,
    OptionalDouble crestDb) {

  static SourceOnFloor of(ResolvedFloor.Source source) {
    FloorSource floor = source.floor();
    return new SourceOnFloor(
        floor.id(),
        floor.title(),
        source.sourceId(),
        source.placementId(),
        Coordinates.of(floor.position()),
        floor.facing().azimuthDeg(),
        floor.facing().elevationDeg(),
        floor.power().db(),
        floor.crestDb());
  }
}
