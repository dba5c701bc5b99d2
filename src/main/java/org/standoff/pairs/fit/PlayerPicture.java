package org.standoff.pairs.fit;

import java.util.List;
import org.standoff.acoustics.Direction;
import org.standoff.pairs.DirectToReverberant;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.Images;

/**
 * How one player comes across.
 *
 * @param playerId name in the question
 * @param direction as the pair sees it, azimuth positive to the left
 * @param distanceM from the middle of the pair
 * @param differences left minus right
 * @param images under each model
 * @param proportionalPct where a proportional picture would put the player
 * @param mono what folding down does
 * @param room direct sound over late field per channel; empty without a room
 */
public record PlayerPicture(
    String playerId,
    Direction direction,
    double distanceM,
    StereoDifferences differences,
    Images images,
    double proportionalPct,
    MonoSum mono,
    List<DirectToReverberant> room) {

  /** What the player loses in the worst octave when folded to mono, in dB ≥ 0. */
  public double monoLossDb() {
    return Math.max(-mono.foldDownDb().get(mono.worstOctave()), 0);
  }
}
