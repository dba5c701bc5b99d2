package org.standoff.answers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.NearMiss;
import org.standoff.floor.Ensemble;
import org.standoff.floor.Player;

/**
 * Players of an ensemble.
 *
 * @param chosen in the order in which they were named, else in that of the ensemble
 * @param others the rest, in the order of the ensemble
 * @param roomId where they play
 */
public record ChosenPlayers(List<Player> chosen, List<Player> others, Optional<String> roomId) {
  private static final ChosenPlayers NONE =
      new ChosenPlayers(List.of(), List.of(), Optional.empty());

  public ChosenPlayers {
    chosen = List.copyOf(chosen);
    others = List.copyOf(others);
  }

  /**
   * Resolves them.
   *
   * @param ensemble the reference; no players where it is null
   * @param names of players; all where it is null
   * @param within the object in which {@code ensemble} stands, as a pointer
   * @param pointer where the names stand in the question
   */
  public static ChosenPlayers resolve(
      References references,
      @Nullable JsonNode ensemble,
      @Nullable List<String> names,
      String within,
      String pointer) {
    if (ensemble != null) {
      return references
          .resolve(Ensemble.class, ensemble, within + "/ensemble")
          .map(found -> of(references, found.item(), names, pointer))
          .orElse(NONE);
    }
    if (names != null) {
      references.fault(
          QuestionFault.of(
              within + "/ensemble",
              QuestionFault.Kind.MISSING,
              "Say of which ensemble the players are."));
    }
    return NONE;
  }

  private static ChosenPlayers of(
      References references, Ensemble ensemble, @Nullable List<String> names, String pointer) {
    Optional<String> roomId = ensemble.roomId();
    if (names == null) {
      return new ChosenPlayers(ensemble.players(), List.of(), roomId);
    }
    List<Player> chosen = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      Optional<Player> player =
          ensemble.players().stream().filter(one -> one.id().equals(name)).findFirst();
      if (player.isEmpty()) {
        references.fault(unknown(ensemble, name, pointer + "/" + i));
      } else if (!chosen.contains(player.get())) {
        chosen.add(player.get());
      }
    }
    List<Player> others =
        ensemble.players().stream().filter(player -> !chosen.contains(player)).toList();
    return new ChosenPlayers(chosen, others, roomId);
  }

  private static QuestionFault unknown(Ensemble ensemble, String name, String pointer) {
    List<String> known = ensemble.players().stream().map(Player::id).toList();
    return QuestionFault.of(
            pointer,
            QuestionFault.Kind.UNKNOWN_VALUE,
            ensemble.id() + " has no player of this name.")
        .found(name)
        .allowed(String.join(", ", known))
        .suggestion(NearMiss.of(name, known));
  }
}
