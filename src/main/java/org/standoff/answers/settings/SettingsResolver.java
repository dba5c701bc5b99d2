package org.standoff.answers.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.Source;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.LinePhantom;
import org.standoff.advice.Position;
import org.standoff.advice.Question;
import org.standoff.advice.Surroundings;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Played;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.Styles;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;

/** Resolves a settings question against one catalogue snapshot. */
final class SettingsResolver {
  private final References references;
  private final SettingsQuestion asked;
  private final Assumptions assumptions = new Assumptions();

  private SettingsResolver(References references, SettingsQuestion asked) {
    this.references = references;
    this.asked = asked;
  }

  /**
   * Resolves the question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  static ResolvedSettingsQuestion resolve(References references, SettingsQuestion asked) {
    return new SettingsResolver(references, asked).resolve();
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
    Collection<Microphone> microphones = microphones();
    Optional<Resolved<Room>> room = room(style);
    if (played.isEmpty() || preamp.isEmpty() || style.isEmpty()) {
      references.refuseFaulty();
      throw new IllegalStateException("what can't be resolved is a fault");
    }
    double distanceM = distanceM(played.get());
    Air air =
        Airs.resolve(
            asked.temperatureC(),
            asked.relativeHumidityPercent(),
            room.map(Resolved::item),
            assumptions);
    Surroundings around =
        new SurroundingsResolver(references, asked, style.get(), assumptions)
            .resolve(room.map(Resolved::item));
    List<Purpose> companions = companions(played.get());
    Question question =
        new Question(
            played.get().placement(),
            played.get().level(),
            played.get().power(),
            positions(distanceM),
            companions,
            preamp.get().item(),
            inLinePads(),
            asked.phantom() == null ? LinePhantom.FREE : asked.phantom(),
            around,
            air,
            style.get());
    List<Question> doubles = doubles(question);
    references.refuseFaulty();
    return new ResolvedSettingsQuestion(
        question,
        played.get(),
        microphones,
        doubles,
        preamp.get().id(),
        room.map(Resolved::id),
        assumptions);
  }

  private Optional<Played> told(Played played) {
    ToldLevel told = asked.toldLevel();
    return told == null
        ? Optional.of(played)
        : ToldLevels.apply(played, told, distanceM(played), references, assumptions);
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

  private List<Purpose> companions(Played played) {
    List<Purpose> purposes = new ArrayList<>();
    List<String> named = asked.companions() == null ? List.of() : asked.companions();
    for (int i = 0; i < named.size(); i++) {
      String pointer = "/companions/" + i;
      String name = named.get(i);
      Source of = played.source();
      if (of.placements().containsKey(name) && !name.equals(played.placement().id())) {
        purposes.add(of.placements().get(name).purpose());
      } else {
        references.fault(
            QuestionFault.of(
                    pointer,
                    QuestionFault.Kind.UNKNOWN_VALUE,
                    "A companion is another placement of the same source.")
                .found(name)
                .allowed(
                    String.join(
                        ", ",
                        of.placements().keySet().stream()
                            .filter(id -> !id.equals(played.placement().id()))
                            .toList())));
      }
    }
    return purposes;
  }

  private List<Double> inLinePads() {
    return asked.inLinePadsDb() == null
        ? List.of()
        : asked.inLinePadsDb().stream().distinct().sorted().toList();
  }

  private Collection<Microphone> microphones() {
    int ways =
        (asked.microphone() == null ? 0 : 1)
            + (asked.microphones() == null ? 0 : 1)
            + (asked.pack() == null ? 0 : 1);
    if (ways > 1) {
      references.fault(
          QuestionFault.of(
              asked.pack() == null ? "/microphones" : "/pack",
              QuestionFault.Kind.CONTRADICTION,
              "Give microphone, microphones or pack, one of them."));
      return List.of();
    }
    if (asked.settings() != null && asked.microphone() == null) {
      references.fault(
          QuestionFault.of(
              "/microphone",
              QuestionFault.Kind.MISSING,
              "Settings are compared on one microphone: say which."));
    }
    if (asked.microphone() != null) {
      return byReference(List.of(asked.microphone()), "/microphone", false);
    }
    if (asked.microphones() != null) {
      return byReference(asked.microphones(), "/microphones", true);
    }
    if (asked.pack() == null) {
      assumptions.add("every microphone of the catalogue is looked at");
    }
    return references.all(Microphone.class, asked.pack(), "/pack");
  }

  private Collection<Microphone> byReference(
      List<JsonNode> nodes, String pointer, boolean indexed) {
    // the same microphone named twice is one candidate
    Map<String, Microphone> found = new LinkedHashMap<>();
    for (int i = 0; i < nodes.size(); i++) {
      references
          .resolve(Microphone.class, nodes.get(i), indexed ? pointer + "/" + i : pointer)
          .ifPresent(resolved -> found.put(resolved.id(), resolved.item()));
    }
    return found.values();
  }

  private List<Question> doubles(Question question) {
    if (asked.doubles() == null || asked.doubles().isEmpty()) {
      return List.of();
    }
    List<Question> all = new ArrayList<>();
    all.add(question);
    for (int i = 0; i < asked.doubles().size(); i++) {
      DoubledSource doubled = asked.doubles().get(i);
      references
          .played(
              doubled.source(),
              doubled.placement(),
              doubled.dynamic(),
              doubled.levelOffsetDb(),
              "/doubles/" + i)
          .ifPresent(played -> all.add(doubled(question, played, doubled.distanceM())));
    }
    return all;
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
