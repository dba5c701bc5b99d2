package org.standoff.pairs.fit;

import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Validity;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.RecordingAngle;

/**
 * A pair that does what was wished.
 *
 * @param rank 1 for the best; equals share one
 * @param layout what it is
 * @param pattern of the open capsules
 * @param measures solved
 * @param distanceM solved: of the stand from the point among the players, horizontally
 * @param pair the same, in place
 * @param sets microphones that make it, best first
 * @param fillPct share of the base that the players fill by the solving model
 * @param recordingAngle by the solving model, at the mean distance of the players
 * @param players how each comes across, in the question's order
 * @param directToReverberantDb mean over players and channels; empty without a room
 * @param givesUp what it costs
 * @param validity what can't be trusted
 * @param penalty what the rank follows from, in per cent of the base; see {@link Ranking}
 */
public record FitSolution(
    int rank,
    PairLayout layout,
    PatternName pattern,
    PairParameters measures,
    double distanceM,
    Pair pair,
    List<MicrophoneSet> sets,
    double fillPct,
    RecordingAngle recordingAngle,
    List<PlayerPicture> players,
    OptionalDouble directToReverberantDb,
    List<GivesUp> givesUp,
    List<Validity> validity,
    double penalty) {
  public FitSolution {
    sets = List.copyOf(sets);
    players = List.copyOf(players);
    givesUp = List.copyOf(givesUp);
    validity = List.copyOf(validity);
  }

  FitSolution ranked(int newRank) {
    return new FitSolution(
        newRank,
        layout,
        pattern,
        measures,
        distanceM,
        pair,
        sets,
        fillPct,
        recordingAngle,
        players,
        directToReverberantDb,
        givesUp,
        validity,
        penalty);
  }
}
