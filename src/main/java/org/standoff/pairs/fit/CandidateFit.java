package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Room;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.SourceOnCapsule;

/** Solves the measures of one candidate, in each order of its knobs. */
final class CandidateFit {
  private final FitQuestion question;
  private final Candidate candidate;
  private final Trial trial;
  private final Solver solver;

  CandidateFit(FitQuestion question, Candidate candidate) {
    this.question = question;
    this.candidate = candidate;
    this.trial = new Trial(question, candidate);
    this.solver = new Solver(trial::fillPct, question.wish().fillPct());
  }

  List<Attempt> attempts() {
    try {
      return solved();
    } catch (SourceOnCapsule on) {
      return List.of(
          new Attempt.Failed(
              new WhyNot.PlayerOnCapsule(candidate.layout().id(), on.channel(), on.distanceM())));
    }
  }

  private List<Attempt> solved() {
    Setting usual = usual();
    ParameterRange distance = question.stand().distanceM();
    Optional<Wish.Window> window = question.wish().directToReverberant();
    if (window.isPresent()) {
      Room room = question.room().orElseThrow();
      Optional<ParameterRange> inside =
          RoomWindow.within(
              distance, window.get(), at -> trial.roomDb(new Setting(usual.measures(), at), room));
      if (inside.isEmpty()) {
        return List.of(new Attempt.Failed(roomOutOfRange(window.get(), trial.roomDb(usual, room))));
      }
      distance = inside.get();
    }
    Setting start = new Setting(usual.measures(), distance.usual());
    List<Attempt> attempts = new ArrayList<>();
    for (List<Knob> order : trial.orders(new Knob(Optional.empty(), distance))) {
      attempts.add(judged(solver.solve(start, order)));
    }
    return attempts;
  }

  private Setting usual() {
    double spacingM = candidate.layout().range(Parameter.SPACING).usual();
    return new Setting(
        candidate.layout().usual().with(Parameter.SPACING, Math.min(spacingM, question.barMostM())),
        question.stand().distanceM().usual());
  }

  private Attempt judged(Setting setting) {
    double filledPct = trial.fillPct(setting);
    if (!question.wish().isFilledBy(filledPct)) {
      return new Attempt.Failed(
          new WhyNot.SpanOutOfReach(
              candidate.layout().id(),
              candidate.pattern().name(),
              filledPct,
              question.wish().fillPct(),
              setting.measures(),
              setting.distanceM()));
    }
    FitSolution solution = new Portrait(trial, setting).solution();
    PlayerPicture worst = Portrait.worstInMono(solution.players());
    OptionalDouble allowed = question.wish().monoLossAtMostDb();
    if (allowed.isPresent() && worst.monoLossDb() > allowed.getAsDouble()) {
      return new Attempt.Failed(
          new WhyNot.MonoLoss(
              candidate.layout().id(),
              candidate.pattern().name(),
              worst.playerId(),
              worst.mono().worstOctave().words(),
              worst.monoLossDb(),
              allowed.getAsDouble()));
    }
    Optional<Wish.Window> window = question.wish().directToReverberant();
    double roomDb = solution.directToReverberantDb().orElse(0);
    return window.isPresent() && !window.get().holds(roomDb)
        ? new Attempt.Failed(roomOutOfRange(window.get(), roomDb))
        : new Attempt.Found(solution);
  }

  private WhyNot roomOutOfRange(Wish.Window window, double roomDb) {
    return new WhyNot.RoomOutOfRange(
        candidate.layout().id(),
        candidate.pattern().name(),
        roomDb,
        window.leastDb(),
        window.mostDb());
  }
}
