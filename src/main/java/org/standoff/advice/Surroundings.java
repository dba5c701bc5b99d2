package org.standoff.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Room;

/**
 * What is around the source.
 *
 * @param room the room, if known or assumed
 * @param backgroundDba noise of the room at the microphone, in dB(A)
 * @param neighbours other sources, one by one
 * @param diffuseDbSpl everything else taken as a diffuse field, in dB SPL, rms
 */
public record Surroundings(
    Optional<Room> room,
    OptionalDouble backgroundDba,
    List<Neighbour> neighbours,
    OptionalDouble diffuseDbSpl) {

  /** Nothing around: a free field without noise. */
  public static final Surroundings NONE =
      new Surroundings(Optional.empty(), OptionalDouble.empty(), List.of(), OptionalDouble.empty());

  public Surroundings {
    neighbours = List.copyOf(neighbours);
  }
}
