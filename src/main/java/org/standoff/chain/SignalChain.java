package org.standoff.chain;

import org.standoff.acoustics.PeakSpl;
import org.standoff.acoustics.RmsSpl;

/**
 * A microphone into a preamp and its converter.
 *
 * @param microphone the microphone
 * @param preamp the preamp
 */
public record SignalChain(Microphone microphone, Preamp preamp) {

  /** What the preamp's input takes off, in dB, ≤ 0; 0 where its impedance is not known. */
  public double loadingDb() {
    return preamp.inputImpedanceOhm().isPresent()
        ? Volts.loadingDb(microphone.sourceImpedanceOhm(), preamp.inputImpedanceOhm().getAsDouble())
        : 0;
  }

  /**
   * Follows a peak through the chain.
   *
   * @param settings how the line is set
   * @param peak peak of the pressure at the capsule
   * @param rise what the pattern adds to it
   * @param rule how the gain is found
   */
  public Reading read(Settings settings, PeakSpl peak, PatternRise rise, GainRule rule) {
    double ahead = rise.aheadDb();
    double atElectronics = ahead;
    double atInput = ahead;
    double atOutput = ahead;
    if (settings.filter().isPresent()) {
      Filter filter = settings.filter().get();
      double behind = rise.behindDb(filter.highPass());
      atOutput = behind;
      if (filter.place() != FilterPlace.PREAMP) {
        atInput = behind;
      }
      if (filter.place() == FilterPlace.BEFORE_ELECTRONICS) {
        atElectronics = behind;
      }
    }
    RmsSpl sine = peak.asSine();
    double padOut = settings.pad().padDb() + settings.inLinePadDb();
    double open =
        Volts.outputDbu(settings.pattern().sensitivityMvPerPa(), sine)
            - padOut
            + atInput
            + rise.aimDb();
    double loading = loadingDb();
    double input = open + loading - settings.preampPadDb();
    double behindInput = input - atInput + atOutput;
    Gain gain = rule.gain(preamp, behindInput);
    double out = behindInput + gain.setDb();
    Headrooms headrooms =
        new Headrooms(
            microphone.bears(settings.pad()).sinePeak().db() - peak.db() - atElectronics,
            preamp.maximumInputDbu() - input,
            preamp.maximumOutputDbu() - out,
            preamp.fullScaleDbu() - out);
    return new Reading(
        peak,
        atElectronics,
        atInput,
        atOutput,
        open,
        loading,
        input,
        gain,
        out - preamp.fullScaleDbu(),
        headrooms);
  }
}
