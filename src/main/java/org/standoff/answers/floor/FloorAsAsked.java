package org.standoff.answers.floor;

import java.util.List;

/**
 * The resolved floor, defaults included.
 *
 * @param room id of the room
 * @param lengthM of its box along x
 * @param widthM along y
 * @param heightM along z
 * @param equivalentBox true where the box only stands in for the room
 * @param radiation how sources radiate
 * @param sources what sounds
 * @param microphones what listens
 * @param barriers what stands between
 */
public record FloorAsAsked(
    String room,
    double lengthM,
    double widthM,
    double heightM,
    boolean equivalentBox,
    Radiation radiation,
    List<SourceOnFloor> sources,
    List<MicrophoneOnFloor> microphones,
    List<BarrierOnFloor> barriers) {

  static FloorAsAsked of(ResolvedFloor floor) {
    return new FloorAsAsked(
        floor.roomId(),
        floor.plan().room().box().lengthM(),
        floor.plan().room().box().widthM(),
        floor.plan().room().box().heightM(),
        floor.plan().equivalentBox(),
        floor.radiation(),
        floor.sources().stream().map(SourceOnFloor::of).toList(),
        floor.microphones().stream().map(MicrophoneOnFloor::of).toList(),
        floor.plan().barriers().stream().map(BarrierOnFloor::of).toList());
  }
}
