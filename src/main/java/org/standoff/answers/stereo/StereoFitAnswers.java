package org.standoff.answers.stereo;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Cautions;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Basis;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.answers.kit.FreeMicrophones;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.fit.FitAnswer;
import org.standoff.pairs.fit.FitSolution;
import org.standoff.pairs.fit.PairFit;

/** Answers which pair does with given players what is wished. */
@ApplicationScoped
public class StereoFitAnswers {
  /** How many layouts that fail are listed; the count tells of the rest. */
  public static final int MOST_WHY_NOT = 50;

  private final AnswerContext context;
  private final GeometryAnswers geometry;
  private final FreeMicrophones freeMicrophones;

  StereoFitAnswers(
      AnswerContext context, GeometryAnswers geometry, FreeMicrophones freeMicrophones) {
    this.context = context;
    this.geometry = geometry;
    this.freeMicrophones = freeMicrophones;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public StereoFitAnswer answer(StereoFitQuestion asked) {
    References references = context.references();
    ResolvedFit resolved = FitResolver.resolve(references, asked, freeMicrophones);
    context.budget().take(FitCost.ms(resolved.question()));
    FitAnswer found = PairFit.answer(resolved.question());
    FitViews views = new FitViews(resolved.question());
    UnfitViews unfit = new UnfitViews(resolved.question().layouts());
    int limit = asked.limit() == null ? StereoFitQuestion.USUAL_LIMIT : asked.limit();
    return new StereoFitAnswer(
        views.solving().study().id(),
        found.solutions().stream().limit(limit).map(views::of).toList(),
        found.solutions().size(),
        found.whyNot().stream().limit(MOST_WHY_NOT).map(unfit::of).toList(),
        found.whyNot().size(),
        Cautions.ofStand(resolved.question().stand().heightM()),
        basis(references, resolved).with(resolved.kitRevision()));
  }

  /**
   * What the best pair makes of the players, as its geometry would answer; for pictures.
   *
   * @throws org.standoff.answers.UnanswerableQuestion also where no pair does what is wished
   */
  public GeometryAnswer best(StereoFitQuestion asked) {
    References references = context.references();
    ResolvedFit resolved = FitResolver.resolve(references, asked, freeMicrophones);
    context.budget().take(FitCost.ms(resolved.question()));
    FitAnswer found = PairFit.answer(resolved.question());
    if (found.solutions().isEmpty()) {
      references.fault(
          QuestionFault.of(
                  "/wish",
                  QuestionFault.Kind.CONTRADICTION,
                  "No pair does this, so there is nothing to draw; ask for application/json to"
                      + " learn why.")
              .found(found.whyNot().isEmpty() ? "no layout" : found.whyNot().get(0).detail()));
    }
    references.refuseFaulty();
    return geometry.answer(references, geometry(found.solutions().get(0), resolved));
  }

  private static ResolvedGeometry geometry(FitSolution best, ResolvedFit resolved) {
    List<NamedOrigin> sources = new ArrayList<>();
    resolved
        .question()
        .players()
        .forEach(
            player ->
                sources.add(
                    new NamedOrigin(
                        player.id(), new SoundOrigin.InRoom(player.position()), "/players")));
    return new ResolvedGeometry(
        new ResolvedPair(
            best.layout().id(),
            Optional.of(best.layout()),
            Optional.of(best.pattern()),
            Optional.of(String.join(", ", best.sets().get(0).microphoneIds())),
            best.measures(),
            best.pair(),
            List.of()),
        true,
        sources,
        resolved.question().models(),
        new FitViews(resolved.question()).solving(),
        resolved.room(),
        resolved.question().air(),
        resolved.assumptions());
  }

  private Basis basis(References references, ResolvedFit resolved) {
    Set<Validity> validity = new LinkedHashSet<>(resolved.question().air().validity());
    resolved
        .room()
        .map(Resolved::item)
        .ifPresent(room -> validity.addAll(room.validity(Octave.HZ_500, Octave.HZ_1K)));
    return new Basis(
        references.catalogue().revision(),
        context.engineVersion(),
        resolved.question().air().speedOfSoundMPerS(),
        resolved.question().air().speedLaw(),
        resolved.assumptions().told(),
        List.copyOf(validity),
        GeometryAnswers.unknowns());
  }
}
