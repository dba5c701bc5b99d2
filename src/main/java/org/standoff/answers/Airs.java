package org.standoff.answers;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;

/** Resolves the air: told, or the room's, or the standard's. */
public final class Airs {
  private Airs() {}

  /** The air of a question. */
  public static Air resolve(
      @Nullable Double temperatureC,
      @Nullable Double relativeHumidityPercent,
      Optional<Room> room,
      Assumptions assumptions) {
    Air usual = room.map(Room::air).orElse(Air.STANDARD);
    if (temperatureC == null && relativeHumidityPercent == null) {
      assumptions.add(
          "the air is taken at %.1f °C, %s",
          usual.temperatureC(), room.isPresent() ? "the room's" : "as nothing is told");
      return usual;
    }
    double temperature = temperatureC == null ? usual.temperatureC() : temperatureC;
    return relativeHumidityPercent == null
        ? Air.at(temperature)
        : Air.at(temperature, relativeHumidityPercent);
  }
}
