package org.standoff.chain;

import java.util.OptionalDouble;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Polar;

/**
 * Noise of a line, referred to sound level. A stated self-noise stands for itself; a passive
 * microphone makes the thermal noise of its source impedance; the preamp adds its amplifier alone,
 * because its measured figure already contains the noise of the resistance that it was measured
 * with. Electrical noise is taken as white when it is A-weighted, so that only like figures are
 * added.
 */
public final class LineNoise {
  private LineNoise() {}

  /**
   * The noise budget of a line.
   *
   * @param chain microphone and preamp
   * @param settings how the line is set
   * @param gainDb the preamp's gain, in dB
   * @param roomDba the room's noise at the microphone's place, in dB(A), if known
   */
  public static NoiseBudget of(
      SignalChain chain, Settings settings, double gainDb, OptionalDouble roomDba) {
    Polar polar = settings.pattern().polar();
    OptionalDouble heard =
        roomDba.isPresent()
            ? OptionalDouble.of(roomDba.getAsDouble() - polar.directivityIndexDb())
            : OptionalDouble.empty();
    return new NoiseBudget(
        heard,
        microphoneDba(chain, settings),
        amplifierDb(chain, settings, gainDb) + AWeighting.whiteNoiseDb());
  }

  private static double microphoneDba(SignalChain chain, Settings settings) {
    double own = ownDba(chain.microphone(), settings.pattern());
    return settings.pattern().selfNoiseDba().isPresent()
        ? own + settings.pad().beforeElectronicsDb()
        : own;
  }

  /**
   * Noise of a microphone by itself with its pads out, as a sound level, in dB(A): as stated, or of
   * a passive one the thermal noise of its source impedance.
   */
  public static double ownDba(Microphone microphone, PatternFigures pattern) {
    OptionalDouble stated = pattern.selfNoiseDba();
    return stated.isPresent()
        ? stated.getAsDouble()
        : Volts.asSplDb(
                pattern.sensitivityMvPerPa(), ThermalNoise.dbu(microphone.sourceImpedanceOhm()))
            + AWeighting.whiteNoiseDb();
  }

  /**
   * The amplifier's noise as a sound level, in dB, unweighted over 20 kHz. Whatever weakens the
   * signal ahead of the amplifier raises it.
   */
  public static double amplifierDb(SignalChain chain, Settings settings, double gainDb) {
    double weakened = settings.totalPadDb() - chain.loadingDb();
    return Volts.asSplDb(
            settings.pattern().sensitivityMvPerPa(), chain.preamp().noise().amplifierDbu(gainDb))
        + weakened;
  }

  /**
   * Noise at a preamp's input with a passive source on it, in dBu, unweighted over 20 kHz.
   *
   * @param noise the preamp's noise
   * @param gainDb its gain, in dB
   * @param sourceOhm impedance of the source, in ohm
   */
  public static double passiveTotalDbu(InputNoise noise, double gainDb, double sourceOhm) {
    return Level.energySum(noise.amplifierDbu(gainDb), ThermalNoise.dbu(sourceOhm));
  }
}
