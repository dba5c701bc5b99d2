package org.standoff.floor;

import java.util.Optional;

/**
 * How far remedies may go.
 *
 * @param aim within which limits the microphone may be turned
 * @param closerShare share of today's distance to try, in (0, 1)
 * @param leastDistanceM no nearer than this
 * @param softerDb how much softer a player might play, above 0
 * @param barrier a barrier at hand
 * @param lining absorbing material at hand
 */
public record RemedyOptions(
    AimLimits aim,
    double closerShare,
    double leastDistanceM,
    double softerDb,
    Optional<Barrier> barrier,
    Optional<Lining> lining) {
  /** Any aim at the usual loss, half the distance but not under 5 cm, 6 dB softer; no material. */
  public static final RemedyOptions USUAL =
      new RemedyOptions(
          AimLimits.anyDirection(AimLimits.USUAL_WANTED_LOSS_DB),
          0.5,
          0.05,
          6,
          Optional.empty(),
          Optional.empty());

  public RemedyOptions {
    if (!(closerShare > 0 && closerShare < 1 && leastDistanceM > 0 && softerDb > 0)) {
      throw new IllegalArgumentException(
          "closer is a share between 0 and 1, distance and softer are above 0, not "
              + closerShare
              + ", "
              + leastDistanceM
              + " m, "
              + softerDb
              + " dB");
    }
  }

  /** The same with a barrier at hand. */
  public RemedyOptions with(Barrier atHand) {
    return new RemedyOptions(
        aim, closerShare, leastDistanceM, softerDb, Optional.of(atHand), lining);
  }

  /** The same with absorbing material at hand. */
  public RemedyOptions with(Lining atHand) {
    return new RemedyOptions(
        aim, closerShare, leastDistanceM, softerDb, barrier, Optional.of(atHand));
  }
}
