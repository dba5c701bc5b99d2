package org.standoff.acoustics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that sounds: it exists and radiates once, however many microphones look at it.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param compound whether it is a body of sources heard as one, never in one sum with its members
 * @param members ids of the sources that a compound consists of
 * @param doubles ids of sources that the same player also plays, one at a time
 * @param extentM largest dimension, in m
 * @param soundPower of the whole source, loud; absent where only the level inside a shell is known
 * @param dynamicsDb offset of each dynamic on all levels, in dB re loud playing (assumed)
 * @param placements the places, by id, in the order of the file
 */
public record Source(
    String id,
    String title,
    boolean compound,
    List<String> members,
    List<String> doubles,
    OptionalDouble extentM,
    Optional<SoundPower> soundPower,
    Map<Dynamic, Double> dynamicsDb,
    Map<String, Placement> placements) {

  public Source {
    members = List.copyOf(members);
    doubles = List.copyOf(doubles);
    dynamicsDb = Map.copyOf(dynamicsDb);
    placements = Collections.unmodifiableMap(new LinkedHashMap<>(placements));
  }

  /** Offset of a dynamic re loud playing, in dB; 0 where the source names none. */
  public double dynamicOffsetDb(Dynamic dynamic) {
    return dynamicsDb.getOrDefault(dynamic, 0.0);
  }
}
