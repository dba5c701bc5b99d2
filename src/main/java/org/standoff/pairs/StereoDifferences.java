package org.standoff.pairs;

import java.util.Optional;

/**
 * How two channels hear one sound: all differences are left minus right.
 *
 * @param levelDb level difference in dB, finite
 * @param timeMs time difference in ms, positive when the left leads
 * @param left the left channel
 * @param right the right channel
 * @param centre the centre channel of a three-capsule layout; no part of the differences
 */
public record StereoDifferences(
    double levelDb, double timeMs, Heard left, Heard right, Optional<Heard> centre) {
  static StereoDifferences of(Heard left, Heard right, Optional<Heard> centre) {
    return new StereoDifferences(
        left.levelDb() - right.levelDb(), left.leadMs() - right.leadMs(), left, right, centre);
  }

  /** True when the channels carry the sound in opposite polarity: it thins out in mono. */
  public boolean oppositePolarity() {
    return left.inverted() != right.inverted();
  }

  /** True when a capped null stands behind the level difference. */
  public boolean rejectionCapped() {
    return left.rejectionCapped() || right.rejectionCapped();
  }
}
