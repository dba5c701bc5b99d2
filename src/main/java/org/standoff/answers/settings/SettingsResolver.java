package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Room;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.LinePhantom;
import org.standoff.advice.Neighbour;
import org.standoff.advice.Position;
import org.standoff.advice.Question;
import org.standoff.answers.Airs;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.Styles;
import org.standoff.answers.ToldLevel;
import org.standoff.answers.ToldLevels;
import org.standoff.answers.kit.AvailableIn;
import org.standoff.answers.kit.FreeMicrophones;
import org.standoff.catalogue.NearMiss;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;

/** Resolves a settings question against one catalogue snapshot. */
final class SettingsResolver {
  private final References references;
  private final SettingsQuestion asked;
  private final FreeMicrophones freeMicrophones;
  private final Assumptions assumptions = new Assumptions();

  private SettingsResolver(
      References references, SettingsQuestion asked, FreeMicrophones freeMicrophones) {
    this.references = references;
    this.asked = asked;
    this.freeMicrophones = freeMicrophones;
  }

  /**
   * Resolves the question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  static ResolvedSettingsQuestion resolve(
      References references, SettingsQuestion asked, FreeMicrophones freeMicrophones) {
    return new SettingsResolver(references, asked, freeMicrophones).resolve();
  }

  private ResolvedSettingsQuestion resolve() {
    Optional<Played> played =
        references
            .played(asked.source(), asked.placement(), asked.dynamic(), asked.levelOffsetDb(), "")
            .flatMap(this::told);
    Optional<Resolved<Preamp>> preamp = references.resolve(Preamp.class, asked.preamp(), "/preamp");
    Optional<HouseStyle> style =
        Styles.resolve(
            references,
            asked.style(),
            asked.guardedPercentile(),
            asked.wantedHeadroomDb(),
            asked.targetPeakDbfs());
    MicrophonesResolver microphones = new MicrophonesResolver(references, asked, assumptions);
    Collection<Microphone> named = microphones.candidates();
    Candidates candidates = candidates(named);
    Optional<Resolved<Room>> room = room(style);
    List<Neighbour> neighbours =
        new NeighboursResolver(references, assumptions).resolve(asked.neighbours());
    List<PlayedAt> doubles = doubles();
    List<ResolvedSettingsQuestion.Given> given =
        preamp.map(p -> microphones.given(named, p.item())).orElse(List.of());
    played.ifPresent(this::checkCompanions);
    // every reference has been looked at by now, so that one round trip tells all faults
    references.refuseFaulty();
    Question question =
        question(
            played.orElseThrow(),
            preamp.orElseThrow().item(),
            room.map(Resolved::item),
            neighbours,
            style.orElseThrow());
    return new ResolvedSettingsQuestion(
        question,
        played.get(),
        candidates,
        doubled(question, doubles),
        given,
        preamp.get().id(),
        room.map(Resolved::id),
        assumptions);
  }

  private Candidates candidates(Collection<Microphone> named) {
    AvailableIn available = asked.available();
    if (available == null) {
      return Candidates.all(named);
    }
    int wanted = asked.secondMicrophone() == null ? 1 : 2;
    return freeMicrophones
        .find(references, available, named.stream().map(Microphone::id).toList(), "/available")
        .map(free -> Candidates.free(named, free, wanted))
        .orElseGet(() -> Candidates.all(named));
  }

  private Question question(
      Played played,
      Preamp preamp,
      Optional<Room> room,
      List<Neighbour> neighbours,
      HouseStyle style) {
    double distanceM = distanceM(played);
    Air air =
        Airs.resolve(asked.temperatureC(), asked.relativeHumidityPercent(), room, assumptions);
    return new Question(
        played.placement(),
        played.level(),
        played.power(),
        positions(distanceM),
        companions(played),
        preamp,
        inLinePads(),
        asked.phantom() == null ? LinePhantom.FREE : asked.phantom(),
        new SurroundingsResolver(asked, style, assumptions).resolve(room, neighbours),
        air,
        style);
  }

  private Optional<Played> told(Played played) {
    ToldLevel told = asked.toldLevel();
    return told == null
        ? Optional.of(played)
        : ToldLevels.apply(played, told, distanceM(played), "/told_level", references, assumptions);
  }

  private double distanceM(Played played) {
    if (asked.distanceM() != null) {
      return asked.distanceM();
    }
    double usual = played.placement().level().atM();
    assumptions.add("the distance is taken as %.3g m, where the catalogue's level holds", usual);
    return usual;
  }

  private Optional<Resolved<Room>> room(Optional<HouseStyle> style) {
    if (asked.room() != null) {
      return references.resolve(Room.class, asked.room(), "/room");
    }
    Optional<String> usual = style.flatMap(s -> s.surrounding().roomId());
    usual.ifPresent(id -> assumptions.add("the room is taken as %s, the style's", id));
    return usual.flatMap(id -> references.byId(Room.class, id, "/style/surrounding/room"));
  }

  private List<Position> positions(double distanceM) {
    List<Position> positions = new ArrayList<>();
    double spread = or(asked.distanceSpreadM(), 0);
    positions.add(
        new Position(distanceM, spread, or(asked.angleDeg(), 0), or(asked.aimOffDeg(), 0)));
    SecondMicrophone second = asked.secondMicrophone();
    if (second != null) {
      positions.add(
          new Position(
              second.distanceM(), spread, or(second.angleDeg(), 0), or(second.aimOffDeg(), 0)));
    }
    return positions;
  }

  private void checkCompanions(Played played) {
    List<String> named = asked.companions() == null ? List.of() : asked.companions();
    List<String> others =
        played.source().placements().keySet().stream()
            .filter(id -> !id.equals(played.placement().id()))
            .toList();
    for (int i = 0; i < named.size(); i++) {
      if (!others.contains(named.get(i))) {
        references.fault(
            QuestionFault.of(
                    "/companions/" + i,
                    QuestionFault.Kind.UNKNOWN_VALUE,
                    "A companion is another placement of the same source.")
                .found(named.get(i))
                .allowed(
                    others.isEmpty() ? "none: it has one placement" : String.join(", ", others))
                .suggestion(NearMiss.of(named.get(i), others)));
      }
    }
  }

  private List<Purpose> companions(Played played) {
    List<String> named = asked.companions() == null ? List.of() : asked.companions();
    return played.source().placements().values().stream()
        .filter(placement -> named.contains(placement.id()))
        .map(Placement::purpose)
        .toList();
  }

  private List<Double> inLinePads() {
    return asked.inLinePadsDb() == null
        ? List.of()
        : asked.inLinePadsDb().stream().distinct().sorted().toList();
  }

  /** A doubled source and the distance told for it. */
  private record PlayedAt(Played played, @Nullable Double distanceM) {}

  private List<PlayedAt> doubles() {
    List<DoubledSource> named = asked.doubles() == null ? List.of() : asked.doubles();
    List<PlayedAt> all = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      DoubledSource doubled = named.get(i);
      references
          .played(
              doubled.source(),
              doubled.placement(),
              doubled.dynamic(),
              doubled.levelOffsetDb(),
              "/doubles/" + i)
          .ifPresent(played -> all.add(new PlayedAt(played, doubled.distanceM())));
    }
    return all;
  }

  private static List<ResolvedSettingsQuestion.Doubled> doubled(
      Question question, List<PlayedAt> doubles) {
    return doubles.stream()
        .map(
            at ->
                new ResolvedSettingsQuestion.Doubled(
                    at.played(), doubled(question, at.played(), at.distanceM())))
        .toList();
  }

  private static Question doubled(Question question, Played played, @Nullable Double distanceM) {
    List<Position> positions =
        distanceM == null
            ? question.positions()
            : question.positions().stream().map(p -> p.at(distanceM)).toList();
    return new Question(
        played.placement(),
        played.level(),
        played.power(),
        positions,
        List.of(),
        question.preamp(),
        question.inLinePadsDb(),
        question.phantom(),
        question.surroundings(),
        question.air(),
        question.style());
  }

  private static double or(@Nullable Double value, double usual) {
    return value == null ? usual : value;
  }
}
