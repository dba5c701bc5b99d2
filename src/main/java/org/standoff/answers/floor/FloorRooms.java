package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;
import org.standoff.answers.Airs;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.catalogue.ItemId;

/**
 * A room of a floor.
 *
 * @param id of the room
 * @param room in the air of the question
 * @param equivalentBox true where its box only stands in for it
 */
record FloorRooms(String id, Room room, boolean equivalentBox) {
  private static final String EQUIVALENT_BOX = "equivalent_box";

  /**
   * Resolves a room.
   *
   * @param asked the reference, if one is told
   * @param ensembleRoomId where the ensemble plays
   * @param within the object in which {@code room} stands, as a pointer
   */
  static Optional<FloorRooms> resolve(
      References references,
      @Nullable JsonNode asked,
      Optional<String> ensembleRoomId,
      @Nullable Double temperatureC,
      @Nullable Double humidityPercent,
      String within,
      Assumptions assumptions) {
    if (asked == null && ensembleRoomId.isEmpty()) {
      references.fault(
          QuestionFault.of(
              within + "/room", QuestionFault.Kind.MISSING, "Say in which room this is."));
      return Optional.empty();
    }
    Optional<Resolved<Room>> found =
        asked == null
            ? ensembleRoom(references, ensembleRoomId.orElseThrow(), within, assumptions)
            : references.resolve(Room.class, asked, within + "/room");
    return found.map(
        resolved -> {
          Air air =
              Airs.resolve(
                  temperatureC, humidityPercent, Optional.of(resolved.item()), assumptions);
          return new FloorRooms(
              resolved.id(), in(air, resolved.item()), equivalent(references, asked, resolved));
        });
  }

  private static Optional<Resolved<Room>> ensembleRoom(
      References references, String id, String within, Assumptions assumptions) {
    assumptions.add("the room is taken as %s, the ensemble's", id);
    return references.byId(Room.class, id, within + "/ensemble/room");
  }

  private static Room in(Air air, Room room) {
    return new Room(
        room.volumeM3(),
        room.surfaceM2(),
        room.absorptionAreaM2(),
        room.box(),
        air,
        room.backgroundNoiseDba());
  }

  private static boolean equivalent(
      References references, @Nullable JsonNode asked, Resolved<Room> room) {
    if (asked != null && asked.isObject()) {
      return asked.path(EQUIVALENT_BOX).asBoolean();
    }
    return ItemId.parse(room.id())
        .flatMap(id -> references.catalogue().find(Room.class, id))
        .map(item -> item.sheet().flag(EQUIVALENT_BOX))
        .orElse(false);
  }
}
