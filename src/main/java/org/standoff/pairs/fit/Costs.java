package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;

/** What a solved pair gives up, in words and figures. */
final class Costs {
  /** Smaller losses, disagreements and strayings aren't worth a sentence. */
  private static final double WORTH_TELLING_DB = 1;

  private static final double WORTH_TELLING_PCT = 10;

  private final List<PlayerPicture> players;
  private final List<PicturedPlayer> others;
  private final PairHearing hearing;
  private final boolean matched;

  Costs(
      List<PlayerPicture> players,
      List<PicturedPlayer> others,
      PairHearing hearing,
      boolean matched) {
    this.players = players;
    this.others = others;
    this.hearing = hearing;
    this.matched = matched;
  }

  double penalty(double missPct) {
    double spreadPct =
        players.stream().mapToDouble(player -> player.images().spreadPct()).average().orElseThrow();
    return Ranking.penalty(
        missPct, unevenPct(), spreadPct, Portrait.worstInMono(players).monoLossDb(), matched);
  }

  List<GivesUp> givesUp() {
    List<GivesUp> costs = new ArrayList<>();
    monoLoss(costs);
    disagreement(costs);
    unevenness(costs);
    if (!matched) {
      costs.add(new GivesUp("unmatched", 1, "the capsules aren't of a matched group"));
    }
    polarity(
        costs,
        "opposite-polarity",
        "reaches left and right in opposite polarity: %s",
        StereoDifferences::oppositePolarity);
    polarity(
        costs,
        "inverted-polarity",
        "reaches both channels turned over, left and right changed: %s",
        heard -> heard.left().inverted() && heard.right().inverted());
    return List.copyOf(costs);
  }

  /** Mean distance of the images from a proportional picture, by the solving model. */
  private double unevenPct() {
    return players.stream().mapToDouble(Costs::strayPct).average().orElseThrow();
  }

  private static double strayPct(PlayerPicture player) {
    return Math.abs(player.images().images().get(0).positionPct() - player.proportionalPct());
  }

  private void monoLoss(List<GivesUp> costs) {
    PlayerPicture worst = Portrait.worstInMono(players);
    if (worst.monoLossDb() >= WORTH_TELLING_DB) {
      costs.add(
          new GivesUp(
              "mono-loss",
              worst.monoLossDb(),
              said(
                  "%s loses %.1f dB at %s when folded to mono",
                  worst.playerId(), worst.monoLossDb(), worst.mono().worstOctave().words())));
    }
  }

  private void disagreement(List<GivesUp> costs) {
    double spreadPct =
        players.stream().mapToDouble(player -> player.images().spreadPct()).max().orElseThrow();
    if (spreadPct >= WORTH_TELLING_PCT) {
      costs.add(
          new GivesUp(
              "models-disagree",
              spreadPct,
              said("listening studies place a player up to %.0f %% apart", spreadPct)));
    }
  }

  private void unevenness(List<GivesUp> costs) {
    double strayPct = unevenPct();
    if (strayPct >= WORTH_TELLING_PCT) {
      costs.add(
          new GivesUp(
              "uneven-picture",
              strayPct,
              said("images stray %.0f %% from a proportional picture in the mean", strayPct)));
    }
  }

  private void polarity(
      List<GivesUp> costs, String code, String detail, Predicate<StereoDifferences> turned) {
    List<String> ids = new ArrayList<>();
    players.stream()
        .filter(player -> turned.test(player.differences()))
        .forEach(player -> ids.add(player.playerId()));
    others.stream()
        .filter(other -> turned.test(hearing.sweeping(new SoundOrigin.InRoom(other.position()))))
        .forEach(other -> ids.add(other.id()));
    if (!ids.isEmpty()) {
      costs.add(new GivesUp(code, ids.size(), said(detail, String.join(", ", ids))));
    }
  }

  private static String said(String format, Object... figures) {
    return String.format(Locale.ROOT, format, figures);
  }
}
