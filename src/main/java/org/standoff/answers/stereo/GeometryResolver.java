package org.standoff.answers.stereo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;
import org.standoff.answers.Airs;
import org.standoff.answers.Assumptions;
import org.standoff.answers.ChosenPlayers;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.SourceOnCapsule;
import org.standoff.pairs.listening.ListeningModel;

/** Resolves a {@link GeometryQuestion} against one catalogue snapshot. */
final class GeometryResolver {
  private final References references;
  private final GeometryQuestion asked;
  private final Assumptions assumptions = new Assumptions();

  private GeometryResolver(References references, GeometryQuestion asked) {
    this.references = references;
    this.asked = asked;
  }

  /**
   * Resolves the question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  static ResolvedGeometry resolve(References references, GeometryQuestion asked) {
    return new GeometryResolver(references, asked).resolve();
  }

  private ResolvedGeometry resolve() {
    Optional<ResolvedPair> pair = new PairResolver(references, asked).resolve(place());
    ChosenPlayers players =
        ChosenPlayers.resolve(references, asked.ensemble(), asked.players(), "", "/players");
    List<NamedOrigin> sources = new SourcesResolver(references, asked).resolve(players);
    List<ListeningModel> models = ListeningModels.resolve(references, asked.models(), assumptions);
    Optional<ListeningModel> criterion = ListeningModels.criterion(references, asked.criterion());
    Optional<Resolved<Room>> room =
        Rooms.resolve(references, asked.room(), players.roomId(), assumptions);
    references.refuseFaulty();
    Air air =
        Airs.resolve(
            asked.temperatureC(),
            asked.relativeHumidityPercent(),
            room.map(Resolved::item),
            assumptions);
    refuseOnCapsule(PairHearing.of(pair.orElseThrow().pair(), air), sources);
    return new ResolvedGeometry(
        pair.orElseThrow(),
        asked.place() != null,
        sources,
        models,
        criterion.orElseThrow(),
        room,
        air,
        assumptions);
  }

  private PairPlace place() {
    PairPosition place = asked.place();
    if (place == null) {
      return PairPlace.ORIGIN;
    }
    if (place.facingAzimuthDeg() == null) {
      assumptions.add("the pair looks to the room's front, as nothing is told");
    }
    return place.place();
  }

  private void refuseOnCapsule(PairHearing hearing, List<NamedOrigin> sources) {
    for (NamedOrigin source : sources) {
      try {
        hearing.differences(source.origin());
      } catch (SourceOnCapsule on) {
        references.fault(
            QuestionFault.of(
                    source.pointer(),
                    QuestionFault.Kind.OUT_OF_RANGE,
                    "Source " + source.id() + " is on the " + on.channel().id() + " capsule.")
                .found(String.format(Locale.ROOT, "%.4f m", on.distanceM()))
                .allowed(
                    String.format(Locale.ROOT, "%.2f m or more", PairHearing.LEAST_DISTANCE_M)));
      }
    }
    references.refuseFaulty();
  }
}
