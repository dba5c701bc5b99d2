package org.standoff.answers.stereo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Room;
import org.standoff.answers.Assumptions;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;

/** Resolves the room: told, or the ensemble's, or none. */
final class Rooms {
  private Rooms() {}

  static Optional<Resolved<Room>> resolve(
      References references,
      @Nullable JsonNode asked,
      Optional<String> ensembleRoomId,
      Assumptions assumptions) {
    Optional<Resolved<Room>> room = found(references, asked, ensembleRoomId, assumptions);
    if (room.isPresent()) {
      assumptions.add("for the late field every source counts as omnidirectional");
    }
    return room;
  }

  private static Optional<Resolved<Room>> found(
      References references,
      @Nullable JsonNode asked,
      Optional<String> ensembleRoomId,
      Assumptions assumptions) {
    if (asked != null) {
      return references.resolve(Room.class, asked, "/room");
    }
    ensembleRoomId.ifPresent(id -> assumptions.add("the room is taken as %s, the ensemble's", id));
    return ensembleRoomId.flatMap(id -> references.byId(Room.class, id, "/ensemble/room"));
  }
}
