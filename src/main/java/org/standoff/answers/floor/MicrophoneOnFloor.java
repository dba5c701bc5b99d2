package org.standoff.answers.floor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.PatternName;
import org.standoff.answers.Coordinates;
import org.standoff.floor.FloorMicrophone;

/**
 * A microphone as it was resolved.
 *
 * @param id on this floor
 * @param microphone in the catalogue
 * @param pattern in use
 * @param omniPart A of A + B cos θ
 * @param nullDeg how far off the axis its null is
 * @param rejectionCapDb how deep nulls are believed
 * @param positionM of its capsule
 * @param azimuthDeg where its axis points
 * @param elevationDeg how far up
 * @param faderDb gain in the mix
 * @param wanted what it is there for
 */
public record MicrophoneOnFloor(
    String id,
    Optional<String> microphone,
    PatternName pattern,
    double omniPart,
    OptionalDouble nullDeg,
    double rejectionCapDb,
    Coordinates positionM,
    double azimuthDeg,
    double elevationDeg,
    double faderDb,
    List<String> wanted) {

  static MicrophoneOnFloor of(ResolvedFloor.Microphone microphone) {
    FloorMicrophone floor = microphone.floor();
    return new MicrophoneOnFloor(
        floor.id(),
        microphone.microphoneId(),
        floor.pattern().name(),
        floor.pattern().polar().omniPart(),
        floor.pattern().polar().nullAngleDeg(),
        floor.rejectionCapDb(),
        Coordinates.of(floor.position()),
        floor.aim().azimuthDeg(),
        floor.aim().elevationDeg(),
        floor.faderDb(),
        floor.wanted().stream().sorted().toList());
  }
}
