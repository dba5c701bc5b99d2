package org.standoff.chain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.RmsSpl;

/**
 * A microphone as its sheet describes it.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param transducer what turns pressure into voltage
 * @param address from which side it works
 * @param diaphragmMm diameter of the diaphragm, in mm
 * @param powering what it needs on its line
 * @param sourceImpedanceOhm output impedance at 1 kHz, in ohm
 * @param ratedLoadOhm least load that its figures hold for, in ohm
 * @param maximumSpl the level it bears with the pad out
 * @param capsuleLimitDbSpl rms sine level past which no pad helps, in dB SPL
 * @param pads the pads besides {@link Pad#OUT}
 * @param highPasses the filters besides none
 * @param outputs one, or two for a mid-side body
 * @param onAxisResponseDb response on axis per octave re 1 kHz, in dB
 * @param rejectionCapDb deepest rejection that is believed, in dB
 * @param massG mass of the body, in g
 * @param lengthMm length of the body, in mm
 * @param basis what the figures rest on
 * @param basisOf the exceptions, by the name of the figure
 */
public record Microphone(
    String id,
    String title,
    Transducer transducer,
    Address address,
    OptionalDouble diaphragmMm,
    Powering powering,
    double sourceImpedanceOhm,
    OptionalDouble ratedLoadOhm,
    MaximumSpl maximumSpl,
    OptionalDouble capsuleLimitDbSpl,
    List<Pad> pads,
    List<Filter> highPasses,
    List<MicrophoneOutput> outputs,
    Optional<Octaves> onAxisResponseDb,
    double rejectionCapDb,
    OptionalDouble massG,
    OptionalDouble lengthMm,
    Basis basis,
    Map<String, Basis> basisOf) {

  public Microphone {
    pads = List.copyOf(pads);
    highPasses = List.copyOf(highPasses);
    outputs = List.copyOf(outputs);
    basisOf = Map.copyOf(basisOf);
  }

  /**
   * The rms level of the sine that it bears with a pad: a pad ahead of the electronics lifts it, at
   * most to the capsule's own limit; one behind them changes nothing.
   */
  public RmsSpl bears(Pad pad) {
    double limit = maximumSpl.level().db();
    double lifted = limit + pad.beforeElectronicsDb();
    if (capsuleLimitDbSpl.isPresent()) {
      lifted = Math.min(lifted, Math.max(limit, capsuleLimitDbSpl.getAsDouble()));
    }
    return new RmsSpl(lifted);
  }

  /** The greatest of such levels, whichever of its pads that takes. */
  public RmsSpl bearsAtMost() {
    return new RmsSpl(
        pads.stream().mapToDouble(pad -> bears(pad).db()).reduce(bears(Pad.OUT).db(), Math::max));
  }

  /** Every pattern of every output. */
  public List<PatternFigures> patterns() {
    return outputs.stream().flatMap(output -> output.patterns().stream()).toList();
  }

  /** The self-noise of every pattern that has one, in dB(A); none without electronics. */
  public DoubleStream selfNoisesDba() {
    return patterns().stream()
        .map(PatternFigures::selfNoiseDba)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble);
  }
}
