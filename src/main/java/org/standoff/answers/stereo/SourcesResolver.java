package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Direction;
import org.standoff.answers.ChosenPlayers;
import org.standoff.answers.Coordinates;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.floor.Player;
import org.standoff.pairs.SoundOrigin;

/** Resolves the sources of a {@link GeometryQuestion}, in whichever way they are told. */
final class SourcesResolver {
  private final References references;
  private final GeometryQuestion asked;
  private final List<NamedOrigin> found = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  SourcesResolver(References references, GeometryQuestion asked) {
    this.references = references;
    this.asked = asked;
  }

  List<NamedOrigin> resolve(ChosenPlayers players) {
    byAzimuth();
    bySource();
    for (Player player : players.chosen()) {
      add(player.id(), new SoundOrigin.InRoom(player.position()), "/ensemble");
    }
    boolean inRoom = found.stream().anyMatch(one -> one.origin() instanceof SoundOrigin.InRoom);
    if (inRoom && asked.place() == null) {
      references.fault(
          QuestionFault.of(
              "/place",
              QuestionFault.Kind.MISSING,
              "A source has a place in the room, so say where the pair stands."));
    }
    return List.copyOf(found);
  }

  private void byAzimuth() {
    List<Double> azimuths = asked.azimuthDeg() == null ? List.of() : asked.azimuthDeg();
    if (azimuths.isEmpty() && asked.distanceM() != null) {
      references.fault(
          QuestionFault.of(
              "/azimuth_deg",
              QuestionFault.Kind.MISSING,
              "The distance belongs to azimuth_deg, which isn't given."));
    }
    for (int i = 0; i < azimuths.size(); i++) {
      add(
          "source-" + (i + 1),
          seen(new Direction(azimuths.get(i), 0), asked.distanceM()),
          "/azimuth_deg/" + i);
    }
  }

  private void bySource() {
    List<HeardSource> sources = asked.sources() == null ? List.of() : asked.sources();
    for (int i = 0; i < sources.size(); i++) {
      String pointer = "/sources/" + i;
      HeardSource source = sources.get(i);
      origin(source, pointer).ifPresent(origin -> add(source.id(), origin, pointer));
    }
  }

  private Optional<SoundOrigin> origin(HeardSource source, String pointer) {
    Coordinates position = source.positionM();
    Double azimuthDeg = source.azimuthDeg();
    if (position != null && azimuthDeg == null) {
      refuseBeside(source.elevationDeg(), pointer + "/elevation_deg");
      refuseBeside(source.distanceM(), pointer + "/distance_m");
      return Optional.of(new SoundOrigin.InRoom(position.point()));
    }
    if (position == null && azimuthDeg != null) {
      double elevationDeg = source.elevationDeg() == null ? 0 : source.elevationDeg();
      return Optional.of(seen(new Direction(azimuthDeg, elevationDeg), source.distanceM()));
    }
    references.fault(
        QuestionFault.of(
            pointer + "/position_m",
            position == null ? QuestionFault.Kind.MISSING : QuestionFault.Kind.CONTRADICTION,
            "Give a source's position_m or its azimuth_deg, one of them."));
    return Optional.empty();
  }

  private void refuseBeside(@Nullable Double given, String pointer) {
    if (given != null) {
      references.fault(
          QuestionFault.of(
              pointer,
              QuestionFault.Kind.CONTRADICTION,
              "It follows from position_m: give it with azimuth_deg only."));
    }
  }

  private static SoundOrigin seen(Direction direction, @Nullable Double distanceM) {
    return distanceM == null
        ? new SoundOrigin.Far(direction)
        : new SoundOrigin.FromPair(direction, distanceM);
  }

  private void add(String name, SoundOrigin origin, String pointer) {
    if (!names.add(name)) {
      references.fault(
          QuestionFault.of(
                  pointer, QuestionFault.Kind.CONTRADICTION, "Two sources have the same name.")
              .found(name));
    }
    found.add(new NamedOrigin(name, origin, pointer));
  }
}
