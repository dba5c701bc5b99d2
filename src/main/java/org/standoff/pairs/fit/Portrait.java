package org.standoff.pairs.fit;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.pairs.DirectToReverberant;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.RecordingAngle;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.Images;

/** Draws up a solved pair: every player, what it costs, what can't be trusted. */
final class Portrait {
  private final FitQuestion question;
  private final Candidate candidate;
  private final Setting setting;
  private final Pair pair;
  private final PairHearing hearing;
  private final double fillPct;
  private final double leftmostDeg;
  private final double rightmostDeg;

  Portrait(Trial trial, Setting setting) {
    this.question = trial.question();
    this.candidate = trial.candidate();
    this.setting = setting;
    this.pair = trial.pair(setting);
    this.hearing = PairHearing.of(pair, question.air());
    this.fillPct = trial.fillPct(setting);
    this.leftmostDeg =
        question.players().stream().mapToDouble(this::azimuthDeg).max().orElseThrow();
    this.rightmostDeg =
        question.players().stream().mapToDouble(this::azimuthDeg).min().orElseThrow();
  }

  FitSolution solution() {
    List<PlayerPicture> players = question.players().stream().map(this::picture).toList();
    boolean matched = candidate.sets().get(0).matched();
    Costs costs = new Costs(players, question.others(), hearing, matched);
    return new FitSolution(
        0,
        candidate.layout(),
        candidate.pattern().name(),
        setting.measures(),
        setting.distanceM(),
        pair,
        candidate.sets(),
        fillPct,
        RecordingAngle.at(hearing, question.solvingModel(), meanDistanceM(players)),
        players,
        roomDb(players),
        costs.givesUp(),
        hearing.validity(),
        costs.penalty(Math.abs(fillPct - question.wish().fillPct())));
  }

  static PlayerPicture worstInMono(List<PlayerPicture> players) {
    return players.stream()
        .max(Comparator.comparingDouble(PlayerPicture::monoLossDb))
        .orElseThrow();
  }

  private PlayerPicture picture(PicturedPlayer player) {
    SoundOrigin origin = new SoundOrigin.InRoom(player.position());
    StereoDifferences heard = hearing.differences(origin);
    return new PlayerPicture(
        player.id(),
        direction(player),
        pair.place().middle().distanceToM(player.position()),
        heard,
        Images.of(question.models(), heard.levelDb(), heard.timeMs()),
        proportionalPct(azimuthDeg(player)),
        MonoSum.of(hearing, origin),
        question
            .room()
            .map(room -> DirectToReverberant.of(hearing, player.position(), room, 1))
            .orElse(List.of()));
  }

  private double proportionalPct(double azimuthDeg) {
    double width = leftmostDeg - rightmostDeg;
    return width == 0 ? 0 : fillPct * (2 * (azimuthDeg - rightmostDeg) / width - 1);
  }

  private double azimuthDeg(PicturedPlayer player) {
    return direction(player).azimuthDeg();
  }

  private Direction direction(PicturedPlayer player) {
    Point3 own = pair.place().toPair(player.position());
    return PairPlace.ORIGIN.middle().directionTo(own);
  }

  private static double meanDistanceM(List<PlayerPicture> players) {
    return players.stream().mapToDouble(PlayerPicture::distanceM).average().orElseThrow();
  }

  private static OptionalDouble roomDb(List<PlayerPicture> players) {
    return players.stream()
        .flatMap(player -> player.room().stream())
        .mapToDouble(DirectToReverberant::midDb)
        .average();
  }
}
