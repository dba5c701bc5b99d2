package org.standoff.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Room;

/**
 * Everything that stands in one room. The origin is a lower corner of the room's box, whose sides
 * lie along the axes.
 *
 * @param room the room; its box carries the image sources
 * @param equivalentBox true where the box only stands in for a room that is none
 * @param sources each sounds on its own; a compound source never together with its members
 * @param microphones at least one
 * @param barriers may be empty
 */
public record FloorPlan(
    Room room,
    boolean equivalentBox,
    List<FloorSource> sources,
    List<FloorMicrophone> microphones,
    List<PlacedBarrier> barriers) {
  public FloorPlan {
    sources = List.copyOf(sources);
    microphones = List.copyOf(microphones);
    barriers = List.copyOf(barriers);
  }

  /** All reasons why nothing should be computed; empty for a sound plan. */
  public List<FloorFault> faults() {
    return FloorChecks.of(this);
  }

  /** The room with the absorption of the barriers in it. */
  public Room furnishedRoom() {
    Room furnished = room;
    for (PlacedBarrier placed : barriers) {
      furnished = Lining.added(furnished, placed.barrier().absorptionAreaM2());
    }
    return furnished;
  }

  public Optional<FloorSource> source(String id) {
    return sources.stream().filter(source -> source.id().equals(id)).findFirst();
  }

  public Optional<FloorMicrophone> microphone(String id) {
    return microphones.stream().filter(microphone -> microphone.id().equals(id)).findFirst();
  }

  /** The same floor with other microphones. */
  public FloorPlan with(List<FloorMicrophone> others) {
    return new FloorPlan(room, equivalentBox, sources, others, barriers);
  }

  /** The same floor in another room. */
  public FloorPlan in(Room other) {
    return new FloorPlan(other, equivalentBox, sources, microphones, barriers);
  }

  /** The same floor with one more barrier. */
  public FloorPlan plus(PlacedBarrier barrier) {
    List<PlacedBarrier> more = new ArrayList<>(barriers);
    more.add(barrier);
    return new FloorPlan(room, equivalentBox, sources, microphones, more);
  }

  /**
   * How many octave paths a matrix with reflections up to {@code order} takes: microphones ×
   * sources × images × octaves; to be bounded before anything is computed.
   */
  public long octavePaths(int order) {
    return (long) microphones.size() * sources.size() * Images.count(order) * Octave.COUNT;
  }
}
