package org.standoff.answers.stereo;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Caution;
import org.standoff.advice.Cautions;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Basis;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.pairs.PairHearing;

/** Answers what a pair makes of its sources. */
@ApplicationScoped
public class GeometryAnswers {
  private final AnswerContext context;

  GeometryAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public GeometryAnswer answer(GeometryQuestion asked) {
    References references = context.references();
    ResolvedGeometry resolved = GeometryResolver.resolve(references, asked);
    context.budget().take(GeometryCost.ms(resolved.sources().size(), resolved.models().size()));
    return answer(references, resolved);
  }

  GeometryAnswer answer(References references, ResolvedGeometry resolved) {
    PairHearing hearing = PairHearing.of(resolved.pair().pair(), resolved.air());
    OptionalDouble distanceM = meanDistanceM(hearing, resolved);
    List<GeometryAnswer.RecordingAngleLine> angles =
        PairViews.recordingAngles(hearing, resolved, distanceM);
    SourceViews views =
        new SourceViews(hearing, resolved.models(), resolved.room(), angles.get(0).totalDeg());
    List<GeometryAnswer.SourceInPair> sources = resolved.sources().stream().map(views::of).toList();
    return new GeometryAnswer(
        PairViews.asked(resolved),
        sources,
        angles,
        PairViews.spreadDeg(angles),
        PairViews.equivalent(hearing.pair()),
        PairViews.mono(hearing, distanceM),
        PairViews.diffuse(hearing),
        PairViews.settingOut(hearing, resolved.sources()),
        new GeometryFlags(sources, angles.get(0)).all(),
        cautions(resolved),
        basis(references, resolved, hearing));
  }

  /** Of the sources from the middle of the pair; empty where any is far or there is none. */
  private static OptionalDouble meanDistanceM(PairHearing hearing, ResolvedGeometry resolved) {
    List<OptionalDouble> all =
        resolved.sources().stream()
            .map(source -> SourceViews.distanceM(hearing, source.origin()))
            .toList();
    return all.stream().anyMatch(OptionalDouble::isEmpty)
        ? OptionalDouble.empty()
        : all.stream().mapToDouble(OptionalDouble::getAsDouble).average();
  }

  private static List<Caution> cautions(ResolvedGeometry resolved) {
    return resolved.placed()
        ? Cautions.ofStand(resolved.pair().pair().place().middle().zM())
        : List.of();
  }

  private Basis basis(References references, ResolvedGeometry resolved, PairHearing hearing) {
    List<Validity> validity = new ArrayList<>(resolved.pair().validity());
    validity.addAll(hearing.validity());
    validity.addAll(resolved.air().validity());
    resolved
        .room()
        .map(Resolved::item)
        .ifPresent(room -> validity.addAll(room.validity(Octave.HZ_500, Octave.HZ_1K)));
    return new Basis(
        references.catalogue().revision(),
        context.engineVersion(),
        resolved.air().speedOfSoundMPerS(),
        resolved.air().speedLaw(),
        resolved.assumptions().told(),
        validity,
        unknowns());
  }

  static List<String> unknowns() {
    return List.of(
        "where the listener sits and what the listening room adds: models hold for a listener in"
            + " the middle of a base of ±30°",
        "how large a source is and how it radiates: each counts as a point that radiates alike to"
            + " both capsules",
        "what real patterns do off their middle octaves");
  }
}
