package org.standoff.rest.catalogue;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.PatternName;
import org.standoff.catalogue.Item;
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
 * @param orderBy what comes first
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
        Double minMaximumSplDb,
    @Schema(
            description =
                "What comes first: by id; self-noise: the quietest, by the quietest of its patterns,"
                    + " and those without electronics last; maximum-level: what bears most with the"
                    + " pad out. By id where left out")
        MicrophoneOrder orderBy)
    implements ItemQuery<Microphone> {

  /** Beyond all levels of microphones either way, so that none is below zero. */
  private static final double FAR_DB = 1000;

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

  @Override
  public String placeOf(Item<? extends Microphone> item) {
    MicrophoneOrder order = Objects.requireNonNullElse(orderBy, MicrophoneOrder.ID);
    String id = item.id().toString();
    return switch (order) {
      case ID -> id;
      case SELF_NOISE ->
          item.value()
                  .selfNoisesDba()
                  .boxed()
                  .min(Double::compare)
                  .map(MicrophoneQuery::place)
                  .orElse("none")
              + " "
              + id;
      case MAXIMUM_LEVEL -> place(-item.value().maximumSpl().level().db()) + " " + id;
    };
  }

  /** A text that stands among others as the number among theirs. */
  private static String place(double db) {
    return String.format(Locale.ROOT, "%09.3f", FAR_DB + db);
  }

  private boolean isQuiet(PatternFigures figures) {
    OptionalDouble noise = figures.selfNoiseDba();
    return noise.isPresent() && noise.getAsDouble() <= maxSelfNoiseDba;
  }

  private static boolean hasPattern(Microphone microphone, Predicate<PatternFigures> wanted) {
    return microphone.patterns().stream().anyMatch(wanted);
  }
}
