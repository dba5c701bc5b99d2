package org.standoff.answers.stereo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;
import org.standoff.answers.Airs;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.kit.FreeMicrophones;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.fit.AtHand;
import org.standoff.pairs.fit.FitQuestion;
import org.standoff.pairs.fit.Stand;
import org.standoff.pairs.fit.Wish;
import org.standoff.pairs.listening.ListeningModel;

/** Resolves a {@link StereoFitQuestion} against one catalogue snapshot. */
final class FitResolver {
  private final References references;
  private final StereoFitQuestion asked;
  private final FreeMicrophones freeMicrophones;
  private final Assumptions assumptions = new Assumptions();

  private FitResolver(
      References references, StereoFitQuestion asked, FreeMicrophones freeMicrophones) {
    this.references = references;
    this.asked = asked;
    this.freeMicrophones = freeMicrophones;
  }

  /**
   * Resolves the question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  static ResolvedFit resolve(
      References references, StereoFitQuestion asked, FreeMicrophones freeMicrophones) {
    return new FitResolver(references, asked, freeMicrophones).resolve();
  }

  private ResolvedFit resolve() {
    FitPlayers players = FitPlayers.resolve(references, asked);
    Optional<Stand> stand =
        new StandResolver(references, asked.stand(), players.players(), assumptions).resolve();
    List<PairLayout> layouts = layouts();
    AtHandResolver atHand = new AtHandResolver(references, asked, assumptions, freeMicrophones);
    List<AtHand> microphones = atHand.resolve();
    List<ListeningModel> models = ListeningModels.placing(references, asked.models(), assumptions);
    Optional<Resolved<Room>> room =
        Rooms.resolve(references, asked.room(), players.roomId(), assumptions);
    Optional<Wish> wish = wish(room.isPresent());
    references.refuseFaulty();
    Air air =
        Airs.resolve(
            asked.temperatureC(),
            asked.relativeHumidityPercent(),
            room.map(Resolved::item),
            assumptions);
    FitQuestion question =
        new FitQuestion(
            players.players(),
            players.others(),
            stand.orElseThrow(),
            asked.barMostM() == null ? Double.POSITIVE_INFINITY : asked.barMostM(),
            layouts,
            microphones,
            wish.orElseThrow(),
            models,
            room.map(Resolved::item),
            air);
    return new ResolvedFit(question, room, atHand.kitRevision(), assumptions);
  }

  private List<PairLayout> layouts() {
    List<PairLayout> layouts =
        named(asked.pairs()).stream()
            .filter(
                layout ->
                    asked.techniques() == null || asked.techniques().contains(layout.technique()))
            .toList();
    if (layouts.isEmpty() && asked.techniques() != null) {
      references.fault(
          QuestionFault.of(
              "/techniques",
              QuestionFault.Kind.CONTRADICTION,
              "None of the layouts that may be used is of these techniques."));
    }
    return layouts;
  }

  private List<PairLayout> named(@Nullable List<JsonNode> given) {
    if (given == null) {
      assumptions.add("every stereo layout of the catalogue may be used");
      return references.all(PairLayout.class, null, "/pairs").stream()
          .sorted(Comparator.comparing(PairLayout::id))
          .toList();
    }
    // the same layout named twice is one layout
    Map<String, PairLayout> found = new LinkedHashMap<>();
    for (int i = 0; i < given.size(); i++) {
      references
          .resolve(PairLayout.class, given.get(i), "/pairs/" + i)
          .ifPresent(one -> found.put(one.id(), one.item()));
    }
    return new ArrayList<>(found.values());
  }

  private Optional<Wish> wish(boolean inRoom) {
    StereoWish given = asked.wish();
    StereoWish.LevelRange range = given.directToReverberantDb();
    if (range != null && range.least() > range.most()) {
      references.fault(
          QuestionFault.of(
              "/wish/direct_to_reverberant_db",
              QuestionFault.Kind.CONTRADICTION,
              "least is above most."));
      return Optional.empty();
    }
    if (range != null && !inRoom) {
      references.fault(
          QuestionFault.of(
              "/room", QuestionFault.Kind.MISSING, "A wish for so much room needs a room."));
    }
    return Optional.of(
        new Wish(
            given.fillPct(),
            given.fillWithinPct() == null ? Wish.USUAL_WITHIN_PCT : given.fillWithinPct(),
            given.monoLossAtMostDb() == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(given.monoLossAtMostDb()),
            range == null
                ? Optional.empty()
                : Optional.of(new Wish.Window(range.least(), range.most()))));
  }
}
