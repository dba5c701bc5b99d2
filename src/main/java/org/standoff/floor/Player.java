package org.standoff.floor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Point3;

/**
 * A player on the floor. More than one part means doubles: one sounds at a time.
 *
 * @param id name inside the ensemble
 * @param title the name for people
 * @param parts what the player plays
 * @param position of the source's reference point
 * @param facingAzimuthDeg where the source faces: 0 = front (+y), positive to the left
 * @param note free text
 */
public record Player(
    String id,
    String title,
    List<Part> parts,
    Point3 position,
    OptionalDouble facingAzimuthDeg,
    Optional<String> note) {

  /**
   * One of the sources that a player plays.
   *
   * @param sourceId id of the source
   * @param levelOffsetDb on all of its levels, in dB
   * @param variantsDb named offsets in place of the usual one, in dB
   */
  public record Part(String sourceId, double levelOffsetDb, Map<String, Double> variantsDb) {
    public Part {
      variantsDb = Map.copyOf(variantsDb);
    }
  }

  public Player {
    parts = List.copyOf(parts);
  }
}
