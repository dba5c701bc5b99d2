package org.standoff.chain;

import java.util.OptionalDouble;
import org.standoff.acoustics.Level;

/**
 * What the noise of a line is made of, each part as the sound level that would make it, in dB(A).
 *
 * @param roomDba the room's noise as the pattern hears it; absent where the room is not known
 * @param microphoneDba self-noise, or the thermal noise of a passive microphone
 * @param preampDba the amplifier of the preamp; −∞ for one without noise
 */
public record NoiseBudget(OptionalDouble roomDba, double microphoneDba, double preampDba) {

  /** The energy sum of the parts, in dB(A). */
  public double totalDba() {
    return Level.energySum(roomDba.orElse(Double.NEGATIVE_INFINITY), microphoneDba, preampDba);
  }

  /** The largest part: {@code room}, {@code microphone} or {@code preamp}. */
  public String dominant() {
    double room = roomDba.orElse(Double.NEGATIVE_INFINITY);
    if (room >= microphoneDba && room >= preampDba) {
      return "room";
    }
    return microphoneDba >= preampDba ? "microphone" : "preamp";
  }
}
