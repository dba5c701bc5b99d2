package org.standoff.floor;

import java.util.List;
import java.util.Optional;

/**
 * A body of players and where they stand.
 *
 * @param id {@code pack/item}
 * @param title the name for people
 * @param roomId id of the room that they play in
 * @param players in the order of the file
 */
public record Ensemble(String id, String title, Optional<String> roomId, List<Player> players) {
  public Ensemble {
    players = List.copyOf(players);
  }
}
