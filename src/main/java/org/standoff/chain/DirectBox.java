package org.standoff.chain;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A direct box: an instrument's unbalanced signal onto a balanced microphone line.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param active whether it needs a supply
 * @param inputImpedanceOhm in ohm
 * @param maximumInputDbu largest input, rms of a sine, in dBu
 * @param lossDb from input to output, in dB, ≥ 0
 * @param pads its pads besides none
 * @param sourceImpedanceOhm output impedance, in ohm
 * @param powering what it needs on its line
 * @param massG in g
 * @param lengthMm in mm
 * @param basis what the figures rest on
 */
public record DirectBox(
    String id,
    String title,
    boolean active,
    double inputImpedanceOhm,
    double maximumInputDbu,
    double lossDb,
    List<Pad> pads,
    double sourceImpedanceOhm,
    Powering powering,
    OptionalDouble massG,
    OptionalDouble lengthMm,
    Basis basis) {
  public DirectBox {
    pads = List.copyOf(pads);
  }
}
