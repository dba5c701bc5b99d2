package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.ChosenPlayers;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.floor.Player;
import org.standoff.pairs.fit.PicturedPlayer;

/**
 * The players of a {@link StereoFitQuestion}, in whichever way they are told.
 *
 * @param players to be spread
 * @param others who are heard too
 * @param roomId where an ensemble plays
 */
record FitPlayers(
    List<PicturedPlayer> players, List<PicturedPlayer> others, Optional<String> roomId) {
  private static final int USUAL_COUNT = 3;

  FitPlayers {
    players = List.copyOf(players);
    others = List.copyOf(others);
  }

  static FitPlayers resolve(References references, StereoFitQuestion asked) {
    ChosenPlayers ensemble =
        ChosenPlayers.resolve(references, asked.ensemble(), asked.playerIds(), "", "/player_ids");
    int ways =
        (asked.players() == null ? 0 : 1)
            + (asked.ensemble() == null ? 0 : 1)
            + (asked.widthM() == null ? 0 : 1);
    if (ways != 1) {
      references.fault(
          QuestionFault.of(
              "/players",
              ways == 0 ? QuestionFault.Kind.MISSING : QuestionFault.Kind.CONTRADICTION,
              "Give players, an ensemble or width_m, one of them."));
    }
    List<PicturedPlayer> players = new ArrayList<>();
    if (asked.widthM() != null) {
      int count = asked.playerCount() == null ? USUAL_COUNT : asked.playerCount();
      players.addAll(PicturedPlayer.line(asked.widthM(), count));
    } else if (asked.playerCount() != null) {
      references.fault(
          QuestionFault.of(
              "/width_m", QuestionFault.Kind.MISSING, "player_count goes with width_m."));
    }
    Set<String> names = new HashSet<>();
    add(references, players, names, asked.players(), "/players");
    ensemble.chosen().forEach(player -> players.add(pictured(player)));
    List<PicturedPlayer> others = new ArrayList<>();
    add(references, others, names, asked.others(), "/others");
    ensemble.others().forEach(player -> others.add(pictured(player)));
    if (ways == 1 && asked.ensemble() != null && players.size() == 1) {
      references.fault(
          QuestionFault.of(
              "/player_ids",
              QuestionFault.Kind.OUT_OF_RANGE,
              "A base is filled by two players at least."));
    }
    return new FitPlayers(players, others, ensemble.roomId());
  }

  private static void add(
      References references,
      List<PicturedPlayer> all,
      Set<String> names,
      @Nullable List<PlayerOnFloor> given,
      String pointer) {
    List<PlayerOnFloor> players = given == null ? List.of() : given;
    for (int i = 0; i < players.size(); i++) {
      PlayerOnFloor player = players.get(i);
      if (!names.add(player.id())) {
        references.fault(
            QuestionFault.of(
                    pointer + "/" + i + "/id",
                    QuestionFault.Kind.CONTRADICTION,
                    "Two players have the same name.")
                .found(player.id()));
      }
      all.add(new PicturedPlayer(player.id(), player.positionM().point()));
    }
  }

  private static PicturedPlayer pictured(Player player) {
    return new PicturedPlayer(player.id(), player.position());
  }
}
