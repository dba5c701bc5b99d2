package org.standoff.answers.stereo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Polar;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;
import org.standoff.pairs.DirectToReverberant;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.fit.FitQuestion;
import org.standoff.pairs.fit.FitSolution;
import org.standoff.pairs.fit.PlayerPicture;
import org.standoff.pairs.listening.ListeningModel;

/** Represents solved pairs. */
final class FitViews {
  private final FitQuestion question;

  FitViews(FitQuestion question) {
    this.question = question;
  }

  /** The model by which measures are solved: the first that places images. */
  ListeningModel solving() {
    return question.models().stream()
        .filter(ListeningModel::placesImages)
        .findFirst()
        .orElseThrow();
  }

  StereoFitAnswer.FittedPair of(FitSolution solution) {
    List<PlayerPicture> players = solution.players();
    return new StereoFitAnswer.FittedPair(
        solution.rank(),
        solution.layout().id(),
        solution.layout().title(),
        solution.layout().technique().id(),
        solution.pattern().id(),
        polar(solution).omniPart(),
        solution.sets().stream()
            .map(set -> new StereoFitAnswer.MicrophonesUsed(set.microphoneIds(), set.matched()))
            .toList(),
        measures(solution),
        solution.distanceM(),
        PairPosition.of(solution.pair().place()),
        solution.fillPct(),
        PairViews.recordingAngle(
            PairHearing.of(solution.pair(), question.air()),
            solving(),
            true,
            solution.recordingAngle().distanceM()),
        players.stream().mapToDouble(PlayerPicture::monoLossDb).max().orElse(0),
        players.stream().mapToDouble(one -> one.images().spreadPct()).average().orElse(0),
        solution.directToReverberantDb(),
        players.stream().map(FitViews::player).toList(),
        solution.givesUp(),
        solution.validity(),
        solution.penalty());
  }

  static Map<String, Double> measures(FitSolution solution) {
    return PairViews.measures(solution.layout(), solution.measures());
  }

  /** Of the open capsules: the left one, or mid. */
  static Polar polar(FitSolution solution) {
    Optional<Capsule> mid = solution.pair().capsule(Channel.MID);
    return mid.or(() -> solution.pair().capsule(Channel.LEFT)).orElseThrow().pattern();
  }

  private static StereoFitAnswer.FittedPlayer player(PlayerPicture player) {
    OptionalDouble room = player.room().stream().mapToDouble(DirectToReverberant::midDb).average();
    return new StereoFitAnswer.FittedPlayer(
        player.playerId(),
        player.direction().azimuthDeg(),
        player.distanceM(),
        player.differences().levelDb(),
        player.differences().timeMs(),
        player.differences().oppositePolarity(),
        player.images().images().stream()
            .map(
                image ->
                    new StereoFitAnswer.PlayerImage(
                        image.modelId(), image.positionPct(), image.beyondStudy()))
            .toList(),
        player.images().spreadPct(),
        player.proportionalPct(),
        player.monoLossDb(),
        player.mono().worstOctave().label(),
        room);
  }
}
