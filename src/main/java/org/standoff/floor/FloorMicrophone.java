package org.standoff.floor;

import java.util.List;
import java.util.Set;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.SourceSide;

/**
 * A microphone that stands somewhere.
 *
 * @param id name on this floor
 * @param title the name for people
 * @param position of the capsule
 * @param aim where its axis points
 * @param pattern the pattern in use
 * @param otherPatterns what else the body can be switched to
 * @param rejectionCapDb no computed rejection is deeper than this, in dB ≥ 0; {@link
 *     org.standoff.acoustics.Polar#DEFAULT_REJECTION_CAP_DB} where nothing is stated, infinite for
 *     the ideal pattern
 * @param faderDb gain in the mix
 * @param wanted ids of the sources that it is there for; empty for a microphone that is there for
 *     the room, which hears nothing unwanted
 * @param side which side of the wanted source's moving part it looks at
 */
public record FloorMicrophone(
    String id,
    String title,
    Point3 position,
    Direction aim,
    FloorPattern pattern,
    List<FloorPattern> otherPatterns,
    double rejectionCapDb,
    double faderDb,
    Set<String> wanted,
    SourceSide side) {

  public FloorMicrophone {
    if (!(rejectionCapDb >= 0) || !Double.isFinite(faderDb)) {
      throw new IllegalArgumentException(
          "a rejection cap is 0 dB or more and a fader finite, not "
              + rejectionCapDb
              + " dB, "
              + faderDb
              + " dB");
    }
    otherPatterns = List.copyOf(otherPatterns);
    wanted = Set.copyOf(wanted);
  }

  public boolean wants(FloorSource source) {
    return wanted.contains(source.id());
  }

  /**
   * Which side of {@code source} it looks at: its own for a wanted one, else the reference side.
   */
  public SourceSide sideOf(FloorSource source) {
    return wants(source) ? side : SourceSide.REFERENCE;
  }

  /** The same microphone, aimed elsewhere. */
  public FloorMicrophone aimed(Direction direction) {
    return with(position, direction, pattern);
  }

  /** The same microphone, moved without turning. */
  public FloorMicrophone at(Point3 place) {
    return with(place, aim, pattern);
  }

  /** The same microphone, switched to another pattern. */
  public FloorMicrophone switchedTo(FloorPattern other) {
    return with(position, aim, other);
  }

  private FloorMicrophone with(Point3 place, Direction direction, FloorPattern used) {
    return new FloorMicrophone(
        id, title, place, direction, used, otherPatterns, rejectionCapDb, faderDb, wanted, side);
  }
}
