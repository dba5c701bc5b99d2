package org.standoff.answers.floor;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.Remedies;
import org.standoff.floor.RemedyOptions;

/** Answers what every microphone hears of every source. */
@ApplicationScoped
public class BleedAnswers {
  private final AnswerContext context;

  BleedAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public BleedAnswer answer(BleedQuestion asked) {
    References references = context.references();
    refuseWithoutMicrophones(references, asked.floor());
    ResolvedFloor floor = FloorResolver.resolve(references, asked.floor());
    int order = FloorCost.order(asked.order(), floor);
    RemediesResolver resolver = new RemediesResolver(references, asked.remedies(), floor);
    Set<String> remedied = resolver.microphones(order);
    RemedyOptions options = resolver.options(remedied);
    references.refuseFaulty();
    boolean octaves = Boolean.TRUE.equals(asked.octaves());
    context
        .budget()
        .take(
            FloorCost.bleedMs(floor.plan(), order, octaves)
                + FloorCost.arrivalsMs(resolver.arrivals(remedied, order)));
    BleedMatrix matrix = BleedMatrix.of(floor.plan(), order);
    BleedViews views = new BleedViews(matrix, octaves);
    List<BleedAnswer.HearingMicrophone> microphones = new ArrayList<>();
    for (int i = 0; i < floor.plan().microphones().size(); i++) {
      boolean look = remedied.contains(floor.plan().microphones().get(i).id());
      microphones.add(
          views.microphone(
              i, look ? Optional.of(Remedies.of(matrix, i, options)) : Optional.empty()));
    }
    return new BleedAnswer(
        FloorAsAsked.of(floor),
        order,
        floor.plan().octavePaths(order),
        microphones,
        matrix.mix().stream().map(BleedViews::inMix).toList(),
        matrix.sharedSources().stream().map(BleedViews::shared).toList(),
        FloorBasis.cautions(floor),
        FloorBasis.of(context, references, floor, matrix.validity()));
  }

  /** A floor on which nothing listens has no answer here; its other faults are told beside it. */
  static void refuseWithoutMicrophones(References references, AskedFloor asked) {
    if (asked.microphones() == null || asked.microphones().isEmpty()) {
      references.fault(
          QuestionFault.of(
              AskedFloor.POINTER + "/microphones",
              QuestionFault.Kind.MISSING,
              "Nothing listens on this floor: give microphones."));
    }
  }
}
