package org.standoff.pairs.fit;

import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Room;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.listening.ListeningModel;

/**
 * What is asked of {@link PairFit}.
 *
 * @param players to be spread over the base, at least two
 * @param others who are heard too: only their polarity is looked at
 * @param stand where the pair may be
 * @param barMostM longest spacing that the bar allows, ≥ 0; infinite for separate stands
 * @param layouts what may be used
 * @param microphones what is at hand, best first
 * @param wish what the pair is to do
 * @param models how images are placed; measures are solved by the first that places any
 * @param room needed when the wish names how much of it; sources count as omnidirectional
 * @param air in the room
 */
public record FitQuestion(
    List<PicturedPlayer> players,
    List<PicturedPlayer> others,
    Stand stand,
    double barMostM,
    List<PairLayout> layouts,
    List<AtHand> microphones,
    Wish wish,
    List<ListeningModel> models,
    Optional<Room> room,
    Air air) {

  /**
   * @throws IllegalArgumentException when a part is missing that nothing can be solved without
   */
  public FitQuestion {
    players = List.copyOf(players);
    others = List.copyOf(others);
    layouts = List.copyOf(layouts);
    microphones = List.copyOf(microphones);
    models = List.copyOf(models);
    if (players.size() < 2) {
      throw new IllegalArgumentException("a base is filled by two players at least");
    }
    if (!(barMostM >= 0)) {
      throw new IllegalArgumentException("a bar is 0 m or longer, not " + barMostM);
    }
    if (models.stream().noneMatch(ListeningModel::placesImages)) {
      throw new IllegalArgumentException("at least one model must place images");
    }
    if (wish.directToReverberant().isPresent() && room.isEmpty()) {
      throw new IllegalArgumentException("a wish for so much room needs a room");
    }
  }

  ListeningModel solvingModel() {
    return models.stream().filter(ListeningModel::placesImages).findFirst().orElseThrow();
  }
}
