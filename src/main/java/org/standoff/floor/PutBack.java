package org.standoff.floor;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.standoff.acoustics.Polar;

/**
 * How exactly a microphone must be put back another day.
 *
 * @param mmFor1Db how much nearer makes it 1 dB louder; empty where no approach does
 * @param mmForOneSample way of sound in one sample
 * @param degFor1Db the least turn that changes its level by 1 dB; empty where no turn does
 */
public record PutBack(OptionalDouble mmFor1Db, double mmForOneSample, OptionalDouble degFor1Db) {
  private static final double CHANGE_DB = 1;
  private static final double SCAN_DEG = 0.5;
  private static final int HALVINGS = 50;

  /** Of a microphone at {@code source}, which it hears at {@code angleDeg} off its axis. */
  static PutBack of(
      FloorMicrophone microphone,
      FloorSource source,
      double distanceM,
      double angleDeg,
      double speedMPerS,
      double sampleRateHz) {
    return new PutBack(
        nearer(source, distanceM),
        1000 * speedMPerS / sampleRateHz,
        turn(microphone.pattern().polar(), microphone.rejectionCapDb(), angleDeg));
  }

  private static OptionalDouble nearer(FloorSource source, double distanceM) {
    DoubleUnaryOperator louderDb =
        x -> source.radiator().levelChangeDb(distanceM, Math.max(distanceM - x, 0));
    return louderDb.applyAsDouble(distanceM) > CHANGE_DB
        ? OptionalDouble.of(1000 * crossing(louderDb, 0, distanceM))
        : OptionalDouble.empty();
  }

  private static OptionalDouble turn(Polar pattern, double capDb, double angleDeg) {
    double today = pattern.levelDbCapped(angleDeg, capDb);
    DoubleUnaryOperator changeDb =
        turn ->
            Math.max(
                Math.abs(pattern.levelDbCapped(angleDeg + turn, capDb) - today),
                Math.abs(pattern.levelDbCapped(angleDeg - turn, capDb) - today));
    for (double turn = SCAN_DEG; turn <= 180; turn += SCAN_DEG) {
      if (changeDb.applyAsDouble(turn) > CHANGE_DB) {
        return OptionalDouble.of(crossing(changeDb, turn - SCAN_DEG, turn));
      }
    }
    return OptionalDouble.empty();
  }

  /** Where a rising change passes 1 dB, by halving. */
  private static double crossing(DoubleUnaryOperator changeDb, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (changeDb.applyAsDouble(middle) > CHANGE_DB) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }
}
