package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standoff.advice.Arrival;
import org.standoff.advice.Neighbour;
import org.standoff.advice.Position;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.answers.References;

/** Resolves the other sources that the microphone hears. */
final class NeighboursResolver {
  private final References references;
  private final Assumptions assumptions;

  NeighboursResolver(References references, Assumptions assumptions) {
    this.references = references;
    this.assumptions = assumptions;
  }

  List<Neighbour> resolve(@Nullable List<NeighbourSource> named) {
    List<Neighbour> found = new ArrayList<>();
    if (named == null) {
      return found;
    }
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
