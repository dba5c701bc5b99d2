package org.standoff.chain;

import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.HighPass;

/**
 * A preamp and the converter behind it.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param inputs number of inputs
 * @param gain range and step of the gain
 * @param maximumInputDbu largest input, rms of a sine, in dBu, pad out
 * @param maximumOutputDbu largest output, rms of a sine, in dBu
 * @param inputImpedanceOhm input impedance, in ohm, where known
 * @param noise equivalent input noise
 * @param padsDb attenuations ahead of the input stage, in dB, besides none
 * @param highPasses filters behind the input stage
 * @param phantomBankSize number of inputs whose phantom is switched together; 0 without phantom
 * @param fullScaleDbu rms of the sine that is 0 dBFS (AES17), in dBu
 */
public record Preamp(
    String id,
    String title,
    int inputs,
    GainRange gain,
    double maximumInputDbu,
    double maximumOutputDbu,
    OptionalDouble inputImpedanceOhm,
    InputNoise noise,
    List<Double> padsDb,
    List<HighPass> highPasses,
    int phantomBankSize,
    double fullScaleDbu) {

  public Preamp {
    padsDb = List.copyOf(padsDb);
    highPasses = List.copyOf(highPasses);
  }

  /** Whether it can feed phantom. */
  public boolean phantomAvailable() {
    return phantomBankSize > 0;
  }
}
