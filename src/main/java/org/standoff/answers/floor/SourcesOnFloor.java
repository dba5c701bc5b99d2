package org.standoff.answers.floor;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Dynamic;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.Source;
import org.standoff.answers.Assumptions;
import org.standoff.answers.ChosenPlayers;
import org.standoff.answers.Coordinates;
import org.standoff.answers.Played;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.ToldLevel;
import org.standoff.answers.ToldLevels;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.FloorSource;
import org.standoff.floor.Player;

/** Resolves what sounds on a floor: players of an ensemble, and sources told one by one. */
final class SourcesOnFloor {
  private final References references;
  private final AskedFloor asked;
  private final Assumptions assumptions;
  private final List<ResolvedFloor.Source> found = new ArrayList<>();

  SourcesOnFloor(References references, AskedFloor asked, Assumptions assumptions) {
    this.references = references;
    this.asked = asked;
    this.assumptions = assumptions;
  }

  /** Where a source stands and where it faces. */
  private record Stance(Point3 position, Optional<Direction> facing) {}

  /** How a source is to be played. */
  private record Manner(
      @Nullable String placement,
      @Nullable Dynamic dynamic,
      double levelOffsetDb,
      @Nullable ToldLevel told) {}

  List<ResolvedFloor.Source> resolve(ChosenPlayers players) {
    Map<String, Playing> playing = playing(players);
    for (Player player : players.chosen()) {
      player(player, playing.getOrDefault(player.id(), Playing.asWritten(player.id())));
    }
    List<StandingSource> sources = asked.sources() == null ? List.of() : asked.sources();
    for (int i = 0; i < sources.size(); i++) {
      standing(sources.get(i), AskedFloor.POINTER + "/sources/" + i);
    }
    if (sources.isEmpty() && asked.ensemble() == null) {
      references.fault(
          QuestionFault.of(
              AskedFloor.POINTER + "/sources",
              QuestionFault.Kind.MISSING,
              "Nothing sounds on this floor: give an ensemble or sources."));
    }
    refuseMembersBesideTheirCompound();
    return List.copyOf(found);
  }

  private Map<String, Playing> playing(ChosenPlayers players) {
    Map<String, Playing> byPlayer = new HashMap<>();
    List<String> known = players.chosen().stream().map(Player::id).toList();
    List<Playing> told = asked.playing() == null ? List.of() : asked.playing();
    for (int i = 0; i < told.size(); i++) {
      String player = told.get(i).player();
      String pointer = AskedFloor.POINTER + "/playing/" + i + "/player";
      if (!known.contains(player)) {
        references.fault(
            QuestionFault.of(
                    pointer, QuestionFault.Kind.UNKNOWN_VALUE, "No such player is on this floor.")
                .found(player)
                .allowed(String.join(", ", known))
                .suggestion(NearMiss.of(player, known)));
      } else if (byPlayer.put(player, told.get(i)) != null) {
        references.fault(
            QuestionFault.of(
                    pointer, QuestionFault.Kind.CONTRADICTION, "This player is told twice.")
                .found(player));
      }
    }
    return byPlayer;
  }

  private void player(Player player, Playing playing) {
    String pointer = pointerOf(playing);
    Optional<Player.Part> part = part(player, playing, pointer);
    if (part.isEmpty()) {
      return;
    }
    Double facing =
        playing.facingAzimuthDeg() == null
            ? boxed(player.facingAzimuthDeg())
            : playing.facingAzimuthDeg();
    Coordinates moved = playing.positionM();
    add(
        player.id(),
        player.title(),
        TextNode.valueOf(part.get().sourceId()),
        new Stance(
            moved == null ? player.position() : moved.point(), facing(player.id(), facing, null)),
        new Manner(
            playing.placement(),
            playing.dynamic(),
            offsetDb(part.get(), playing, pointer),
            playing.toldLevel()),
        pointer);
  }

  private String pointerOf(Playing playing) {
    int index = asked.playing() == null ? -1 : asked.playing().indexOf(playing);
    return AskedFloor.POINTER + (index < 0 ? "/ensemble" : "/playing/" + index);
  }

  private Optional<Player.Part> part(Player player, Playing playing, String pointer) {
    List<String> ids = player.parts().stream().map(Player.Part::sourceId).toList();
    String wanted = playing.source();
    if (wanted == null) {
      if (ids.size() > 1) {
        assumptions.add("%s plays %s", player.id(), ids.get(0));
      }
      return Optional.of(player.parts().get(0));
    }
    if (!ids.contains(wanted)) {
      references.fault(
          QuestionFault.of(
                  pointer + "/source",
                  QuestionFault.Kind.UNKNOWN_VALUE,
                  player.id() + " does not play this.")
              .found(wanted)
              .allowed(String.join(", ", ids))
              .suggestion(NearMiss.of(wanted, ids)));
      return Optional.empty();
    }
    return Optional.of(player.parts().get(ids.indexOf(wanted)));
  }

  private double offsetDb(Player.Part part, Playing playing, String pointer) {
    double own = playing.levelOffsetDb() == null ? 0 : playing.levelOffsetDb();
    String variant = playing.variant();
    if (variant == null) {
      return part.levelOffsetDb() + own;
    }
    Double replaced = part.variantsDb().get(variant);
    if (replaced == null) {
      List<String> known = part.variantsDb().keySet().stream().sorted().toList();
      references.fault(
          QuestionFault.of(
                  pointer + "/variant",
                  QuestionFault.Kind.UNKNOWN_VALUE,
                  "The ensemble names no such way of playing here.")
              .found(variant)
              .allowed(known.isEmpty() ? "none" : String.join(", ", known))
              .suggestion(NearMiss.of(variant, known)));
      return own;
    }
    return replaced + own;
  }

  private void standing(StandingSource source, String pointer) {
    add(
        source.id(),
        source.id(),
        source.source(),
        new Stance(
            source.positionM().point(),
            facing(source.id(), source.facingAzimuthDeg(), source.facingElevationDeg())),
        new Manner(
            source.placement(),
            source.dynamic(),
            source.levelOffsetDb() == null ? 0 : source.levelOffsetDb(),
            source.toldLevel()),
        pointer);
  }

  private Optional<Direction> facing(
      String id, @Nullable Double azimuthDeg, @Nullable Double elevationDeg) {
    if (azimuthDeg == null && elevationDeg == null) {
      if (asked.radiation() != Radiation.OMNIDIRECTIONAL_POINTS) {
        assumptions.add("%s faces nowhere, so it radiates alike to all sides", id);
      }
      return Optional.empty();
    }
    return Optional.of(
        new Direction(
            azimuthDeg == null ? 0 : azimuthDeg, elevationDeg == null ? 0 : elevationDeg));
  }

  private void add(
      String id, String title, JsonNode source, Stance stance, Manner manner, String pointer) {
    references
        .resolve(Source.class, source, pointer + "/source")
        .flatMap(resolved -> played(resolved, source, manner, pointer))
        .flatMap(played -> told(played, manner, pointer))
        .flatMap(played -> onFloor(id, title, played, stance, pointer))
        .ifPresent(found::add);
  }

  private Optional<Played> played(
      Resolved<Source> source, JsonNode reference, Manner manner, String pointer) {
    Optional<String> placement =
        manner.placement() == null
            ? source.item().placements().values().stream()
                .filter(one -> !(one.radiator() instanceof Radiator.Shell))
                .map(Placement::id)
                .findFirst()
            : Optional.of(manner.placement());
    if (placement.isEmpty()) {
      references.fault(
          QuestionFault.of(
              pointer + "/placement",
              QuestionFault.Kind.MISSING,
              source.id() + " is known inside a shell only, which tells nothing across a room."));
      return Optional.empty();
    }
    if (manner.placement() == null && source.item().placements().size() > 1) {
      assumptions.add("%s radiates as at its placement '%s'", source.id(), placement.get());
    }
    return references.played(
        reference, placement.get(), manner.dynamic(), manner.levelOffsetDb(), pointer);
  }

  private Optional<Played> told(Played played, Manner manner, String pointer) {
    ToldLevel told = manner.told();
    return told == null
        ? Optional.of(played)
        : ToldLevels.apply(
            played,
            told,
            played.placement().level().atM(),
            pointer + "/told_level",
            references,
            assumptions);
  }

  private Optional<ResolvedFloor.Source> onFloor(
      String id, String title, Played played, Stance stance, String pointer) {
    Placement placement = played.placement();
    if (placement.radiator() instanceof Radiator.Shell) {
      refuse(pointer, "placement", "Inside a shell no law tells what crosses a room.");
      return Optional.empty();
    }
    if (played.power().isEmpty() || placement.spectrum().isEmpty()) {
      refuse(pointer, "source", "A floor needs the source's sound power and its spectrum.");
      return Optional.empty();
    }
    boolean points = asked.radiation() == Radiation.OMNIDIRECTIONAL_POINTS;
    FloorSource standing =
        new FloorSource(
            id,
            title,
            stance.position(),
            stance.facing().orElse(Direction.FRONT),
            points ? new Radiator.Point(0) : placement.radiator(),
            points || stance.facing().isEmpty() ? Directivity.OMNI : placement.directivity(),
            FloorSource.powerPerOctave(played.power().get(), placement.spectrum().get()),
            OptionalDouble.of(played.level().crestDb()));
    return Optional.of(
        new ResolvedFloor.Source(
            played.id(), placement.id(), played.source().members(), standing, pointer));
  }

  private void refuse(String pointer, String member, String why) {
    references.fault(
        QuestionFault.of(pointer + "/" + member, QuestionFault.Kind.OUT_OF_RANGE, why));
  }

  /** A kit and its snare in one sum would count the snare twice. */
  private void refuseMembersBesideTheirCompound() {
    for (ResolvedFloor.Source compound : found) {
      for (ResolvedFloor.Source other : found) {
        if (compound.members().contains(other.sourceId())) {
          references.fault(
              QuestionFault.of(
                      other.pointer(),
                      QuestionFault.Kind.CONTRADICTION,
                      other.sourceId()
                          + " is part of "
                          + compound.sourceId()
                          + ", which is here too: it would count twice.")
                  .found(other.floor().id()));
        }
      }
    }
  }

  private static @Nullable Double boxed(OptionalDouble figure) {
    return figure.isPresent() ? figure.getAsDouble() : null;
  }
}
