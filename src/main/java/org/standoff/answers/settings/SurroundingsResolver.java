package org.standoff.answers.settings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Room;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.Neighbour;
import org.standoff.advice.Surroundings;
import org.standoff.answers.Assumptions;

/** Resolves what is around the source: told, or the style's. */
final class SurroundingsResolver {
  private final SettingsQuestion asked;
  private final HouseStyle style;
  private final Assumptions assumptions;

  SurroundingsResolver(SettingsQuestion asked, HouseStyle style, Assumptions assumptions) {
    this.asked = asked;
    this.style = style;
    this.assumptions = assumptions;
  }

  Surroundings resolve(Optional<Room> room, List<Neighbour> neighbours) {
    return new Surroundings(room, background(room), neighbours, diffuse(neighbours));
  }

  private OptionalDouble background(Optional<Room> room) {
    if (asked.backgroundNoiseDba() != null) {
      return OptionalDouble.of(asked.backgroundNoiseDba());
    }
    return room.map(r -> OptionalDouble.of(r.backgroundNoiseDba())).orElse(OptionalDouble.empty());
  }

  private OptionalDouble diffuse(List<Neighbour> neighbours) {
    if (asked.neighbourLevelDbSpl() != null) {
      return OptionalDouble.of(asked.neighbourLevelDbSpl());
    }
    OptionalDouble usual = style.surrounding().neighbourLevelDbSpl();
    if (!neighbours.isEmpty() || usual.isEmpty()) {
      return OptionalDouble.empty();
    }
    assumptions.add(
        "everything else at the microphone is taken as a diffuse %.0f dB SPL, the style's",
        usual.getAsDouble());
    return usual;
  }
}
