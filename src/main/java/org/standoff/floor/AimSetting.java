package org.standoff.floor;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * One way to set a microphone, and what it hears so.
 *
 * @param position of the capsule
 * @param aim of the axis
 * @param pattern in use
 * @param wantedDb direct sound of what it is there for
 * @param unwantedDb all else, weighted as asked, room included
 * @param unwantedRoomDb the part of it that reflections and the late field carry
 * @param trimDb by how much the wanted source on the axis is louder than at today's place: the gain
 *     comes down by it, and with it everything unwanted; 0 for a microphone that only turns
 */
public record AimSetting(
    Point3 position,
    Direction aim,
    FloorPattern pattern,
    double wantedDb,
    double unwantedDb,
    double unwantedRoomDb,
    double trimDb) {

  /** What the search makes small: the unwanted level after the gain has been set anew. */
  public double unwantedAtEqualGainDb() {
    return unwantedDb - trimDb;
  }

  /** The wanted level after the gain has been set anew. */
  public double wantedAtEqualGainDb() {
    return wantedDb - trimDb;
  }
}
