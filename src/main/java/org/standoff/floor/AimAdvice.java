package org.standoff.floor;

import java.util.Optional;

/**
 * The best that turning, switching and moving can do for a microphone.
 *
 * @param microphoneId id of the microphone
 * @param today as it stands, without any new barrier
 * @param best never worse than today
 * @param second the best of another basin: another pattern, or an aim well apart
 */
public record AimAdvice(
    String microphoneId, AimSetting today, AimSetting best, Optional<AimSetting> second) {
  /** A gain below this is not worth a walk to the stand (common practice). */
  public static final double WORTHWHILE_DB = 1;

  /** By how much the unwanted level falls at equal gain, in dB, ≥ 0. */
  public double gainDb() {
    return today.unwantedAtEqualGainDb() - best.unwantedAtEqualGainDb();
  }

  /**
   * Whether aiming is no cure: it gains too little, and would even if it shut out all direct sound,
   * because the room carries the rest.
   */
  public boolean pointless() {
    return gainDb() < WORTHWHILE_DB && today.unwantedDb() - today.unwantedRoomDb() < WORTHWHILE_DB;
  }
}
