package org.standoff.rest.catalogue;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.PatternName;
import org.standoff.chain.Address;
import org.standoff.chain.Microphone;
import org.standoff.chain.PadPosition;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.Transducer;

/**
 * What the list of microphones is narrowed by.
 *
 * @param pack only items of this pack
 * @param q words that all stand in the id, the title or the notes
 * @param pattern one of the patterns that it can be switched to
 * @param transducer what turns pressure into voltage
 * @param address from which side it works
 * @param padPosition it has a pad there
 * @param maxSelfNoiseDba the self-noise of one of its patterns is at most this
 * @param minMaximumSplDb its maximum SPL, pad out, is at least this
 */
@Schema(name = "MicrophoneQuery", description = "What the list of microphones is narrowed by")
public record MicrophoneQuery(
    @Schema(description = "Only items of this pack", examples = "core") @Size(max = 64) String pack,
    @Schema(description = "Words that all stand in the id, the title or the notes") @Size(max = 200)
        String q,
    @Schema(description = "One of the patterns that it can be switched to") PatternName pattern,
    @Schema(description = "What turns pressure into voltage") Transducer transducer,
    @Schema(description = "From which side it works") Address address,
    @Schema(description = "It has a pad there") PadPosition padPosition,
    @Schema(
            description =
                "The self-noise of one of its patterns is at most this, dB(A); microphones without"
                    + " electronics have none and are left out")
        @DecimalMin("-20")
        @DecimalMax("80")
        Double maxSelfNoiseDba,
    @Schema(
            description =
                "Its maximum SPL with the pad out is at least this, dB re 20 µPa, rms of a sine")
        @DecimalMin("0")
        @DecimalMax("200")
        Double minMaximumSplDb)
    implements ItemQuery<Microphone> {

  @Override
  public boolean keeps(Microphone microphone) {
    return (transducer == null || microphone.transducer() == transducer)
        && (address == null || microphone.address() == address)
        && (padPosition == null
            || microphone.pads().stream().anyMatch(pad -> pad.position() == padPosition))
        && (minMaximumSplDb == null || microphone.maximumSpl().level().db() >= minMaximumSplDb)
        && (pattern == null || hasPattern(microphone, figures -> figures.name() == pattern))
        && (maxSelfNoiseDba == null || hasPattern(microphone, this::isQuiet));
  }

  private boolean isQuiet(PatternFigures figures) {
    OptionalDouble noise = figures.selfNoiseDba();
    return noise.isPresent() && noise.getAsDouble() <= maxSelfNoiseDba;
  }

  private static boolean hasPattern(Microphone microphone, Predicate<PatternFigures> wanted) {
    Stream<PatternFigures> all =
        microphone.outputs().stream().flatMap(output -> output.patterns().stream());
    return all.anyMatch(wanted);
  }
}
