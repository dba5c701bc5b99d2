package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Room;
import org.standoff.advice.Arrival;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.Neighbour;
import org.standoff.advice.Position;
import org.standoff.advice.Surroundings;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.answers.References;

/** Resolves what is around the source: told, or the style's. */
final class SurroundingsResolver {
  private final References references;
  private final SettingsQuestion asked;
  private final HouseStyle style;
  private final Assumptions assumptions;

  SurroundingsResolver(
      References references, SettingsQuestion asked, HouseStyle style, Assumptions assumptions) {
    this.references = references;
    this.asked = asked;
    this.style = style;
    this.assumptions = assumptions;
  }

  Surroundings resolve(Optional<Room> room) {
    List<Neighbour> neighbours = neighbours();
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

  private List<Neighbour> neighbours() {
    List<Neighbour> found = new ArrayList<>();
    List<NeighbourSource> named = asked.neighbours() == null ? List.of() : asked.neighbours();
    for (int i = 0; i < named.size(); i++) {
      NeighbourSource neighbour = named.get(i);
      references
          .firstPlacement(
              neighbour.source(),
              neighbour.placement(),
              neighbour.dynamic(),
              neighbour.levelOffsetDb(),
              "/neighbours/" + i)
          .ifPresent(played -> found.add(heard(neighbour, played)));
    }
    return found;
  }

  /** A neighbour's direct sound at the microphone, by the law of its own radiator. */
  private Neighbour heard(NeighbourSource neighbour, Played played) {
    double offAxis = neighbour.sourceAngleDeg() == null ? 0 : neighbour.sourceAngleDeg();
    if (neighbour.sourceAngleDeg() == null) {
      assumptions.add("%s is taken to face the microphone", played.id());
    }
    Position there = new Position(neighbour.distanceM(), 0, offAxis, 0);
    Arrival arrival = Arrival.of(played.placement(), played.level(), there);
    return new Neighbour(played.id(), arrival.longTerm(), neighbour.angleDeg(), played.power());
  }
}
