package org.standoff.answers.floor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.PatternName;
import org.standoff.advice.Caution;
import org.standoff.answers.Basis;
import org.standoff.answers.Coordinates;

/**
 * The answer to an {@link AimQuestion}.
 *
 * @param floor the resolved floor, as it stands today
 * @param order of the reflections computed one by one
 * @param microphones in the order asked for
 * @param barrier the place chosen of those offered; none where a barrier is no better than none
 * @param cautions about the stands
 * @param basis what the answer rests on
 */
public record AimAnswer(
    FloorAsAsked floor,
    int order,
    List<AimedMicrophone> microphones,
    Optional<BarrierPlace> barrier,
    List<Caution> cautions,
    Basis basis) {

  /** One microphone: today, the best, and the best of another basin. */
  public record AimedMicrophone(
      String id,
      OptionalDouble gainDb,
      boolean pointless,
      String because,
      AimLine today,
      AimLine best,
      Optional<AimLine> second) {}

  /**
   * A setting, and what the microphone hears so; equal gain counts the wanted level on its axis.
   */
  public record AimLine(
      Coordinates positionM,
      double azimuthDeg,
      double elevationDeg,
      PatternName pattern,
      OptionalDouble wantedDbSpl,
      OptionalDouble unwantedDbSpl,
      OptionalDouble unwantedRoomDbSpl,
      OptionalDouble wantedAtEqualGainDbSpl,
      OptionalDouble unwantedAtEqualGainDbSpl) {}
}
