package org.standoff.pairs.fit;

import java.util.List;
import java.util.stream.IntStream;
import org.standoff.acoustics.Point3;

/**
 * A player whom the pair hears.
 *
 * @param id name in the question
 * @param position in the room, finite
 */
public record PicturedPlayer(String id, Point3 position) {
  public PicturedPlayer {
    if (!Double.isFinite(position.xM() + position.yM() + position.zM())) {
      throw new IllegalArgumentException("player " + id + " has no finite position: " + position);
    }
  }

  /**
   * A line of players for a question that tells only its width: along x through the origin, evenly
   * spread, {@code player-1} at the left end.
   *
   * @param widthM above 0
   * @param count at least 2
   */
  public static List<PicturedPlayer> line(double widthM, int count) {
    if (!(widthM > 0) || count < 2) {
      throw new IllegalArgumentException(
          "a line has a width above 0 m and two players, not " + widthM + " m and " + count);
    }
    return IntStream.range(0, count)
        .mapToObj(
            at ->
                new PicturedPlayer(
                    "player-" + (at + 1),
                    new Point3(widthM * ((double) at / (count - 1) - 0.5), 0, 0)))
        .toList();
  }
}
