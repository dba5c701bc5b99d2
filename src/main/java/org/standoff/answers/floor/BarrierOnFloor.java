package org.standoff.answers.floor;

import org.standoff.floor.PlacedBarrier;

/**
 * A barrier as it was resolved.
 *
 * @param barrier in the catalogue
 * @param title for people
 * @param place where it stands
 * @param widthM its width
 * @param heightM its height
 */
public record BarrierOnFloor(
    String barrier, String title, BarrierPlace place, double widthM, double heightM) {

  static BarrierOnFloor of(PlacedBarrier placed) {
    return new BarrierOnFloor(
        placed.barrier().id(),
        placed.barrier().title(),
        BarrierPlace.of(placed),
        placed.barrier().widthM(),
        placed.barrier().heightM());
  }
}
