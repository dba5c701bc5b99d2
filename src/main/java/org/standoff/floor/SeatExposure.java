package org.standoff.floor;

import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.UncertainDb;

/**
 * A day at one seat.
 *
 * @param seatId id of the seat
 * @param partsDba level of each part of the day, in its order; −∞ for silence
 * @param dailyDba LEX,8h in dB(A)
 * @param doses dose of each rule, each for itself
 * @param peakDb highest instantaneous peak, direct sound, without the C weighting that the rules
 *     mean; empty where no crest is known
 * @param reached values of the directive that the typical figures reach
 * @param perhapsReached values that the high figures reach and the typical don't
 */
public record SeatExposure(
    String seatId,
    List<UncertainDb> partsDba,
    UncertainDb dailyDba,
    List<Dose> doses,
    Optional<UncertainDb> peakDb,
    List<EuActionValue> reached,
    List<EuActionValue> perhapsReached) {

  /**
   * A dose with its range, in per cent of the allowed day.
   *
   * @param rule whose day
   * @param lowPercent at the 5th percentile of the levels
   * @param typicalPercent at the 50th
   * @param highPercent at the 95th
   */
  public record Dose(
      ExposureRule rule, double lowPercent, double typicalPercent, double highPercent) {}

  public SeatExposure {
    partsDba = List.copyOf(partsDba);
    doses = List.copyOf(doses);
    reached = List.copyOf(reached);
    perhapsReached = List.copyOf(perhapsReached);
  }
}
