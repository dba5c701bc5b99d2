package org.standoff.answers.settings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.HighPass;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.chain.Filter;
import org.standoff.chain.FilterPlace;
import org.standoff.chain.Microphone;
import org.standoff.chain.MicrophoneOutput;
import org.standoff.chain.Pad;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.Preamp;
import org.standoff.chain.Settings;

/** Finds what given settings name on the microphone and the preamp. */
public final class GivenSettingsResolver {
  private final References references;
  private final Microphone microphone;
  private final Preamp preamp;
  private final String pointer;

  /**
   * For one set of settings.
   *
   * @param pointer where they stand in the question
   */
  public GivenSettingsResolver(
      References references, Microphone microphone, Preamp preamp, String pointer) {
    this.references = references;
    this.microphone = microphone;
    this.preamp = preamp;
    this.pointer = pointer;
  }

  /** The settings; empty where something that they name is not there, which is noted. */
  public Optional<Settings> resolve(GivenSettings given) {
    Optional<MicrophoneOutput> output = output(given.output());
    Optional<PatternFigures> pattern = output.flatMap(o -> pattern(o, given));
    Optional<Pad> pad = pad(given.padDb());
    Optional<Optional<Filter>> filter = filter(given.highPassHz());
    Optional<Double> preampPad = preampPad(given.preampPadDb());
    if (pattern.isEmpty() || pad.isEmpty() || filter.isEmpty() || preampPad.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Settings(
            output.orElseThrow().id(),
            pattern.get(),
            filter.get(),
            pad.get(),
            given.inLinePadDb() == null ? 0 : given.inLinePadDb(),
            preampPad.get()));
  }

  private Optional<MicrophoneOutput> output(@Nullable String id) {
    List<MicrophoneOutput> outputs = microphone.outputs();
    if (id == null) {
      return Optional.of(outputs.get(0));
    }
    Optional<MicrophoneOutput> found = outputs.stream().filter(o -> o.id().equals(id)).findFirst();
    return noted(found, "/output", id, outputs.stream().map(MicrophoneOutput::id).toList());
  }

  private Optional<PatternFigures> pattern(MicrophoneOutput output, GivenSettings given) {
    if (given.pattern() == null) {
      return Optional.of(output.patterns().get(0));
    }
    Optional<PatternFigures> found =
        output.patterns().stream().filter(p -> p.name() == given.pattern()).findFirst();
    return noted(
        found,
        "/pattern",
        given.pattern().id(),
        output.patterns().stream().map(p -> p.name().id()).toList());
  }

  private Optional<Pad> pad(@Nullable Double padDb) {
    if (padDb == null || padDb == 0) {
      return Optional.of(Pad.OUT);
    }
    Optional<Pad> found = microphone.pads().stream().filter(p -> p.padDb() == padDb).findFirst();
    return noted(found, "/pad_db", padDb, microphone.pads().stream().map(Pad::padDb).toList());
  }

  private Optional<Double> preampPad(@Nullable Double padDb) {
    if (padDb == null || padDb == 0) {
      return Optional.of(0.0);
    }
    Optional<Double> found = preamp.padsDb().stream().filter(p -> p.equals(padDb)).findFirst();
    return noted(found, "/preamp_pad_db", padDb, preamp.padsDb());
  }

  private Optional<Optional<Filter>> filter(@Nullable Double cornerHz) {
    if (cornerHz == null || cornerHz == 0) {
      return Optional.of(Optional.empty());
    }
    Optional<Filter> found =
        microphone.highPasses().stream()
            .filter(f -> f.highPass().cornerHz() == cornerHz)
            .findFirst()
            .or(
                () ->
                    preamp.highPasses().stream()
                        .filter(h -> h.cornerHz() == cornerHz)
                        .findFirst()
                        .map(h -> new Filter(h, FilterPlace.PREAMP)));
    List<Double> corners =
        Stream.concat(
                microphone.highPasses().stream().map(f -> f.highPass().cornerHz()),
                preamp.highPasses().stream().map(HighPass::cornerHz))
            .toList();
    return noted(found, "/high_pass_hz", cornerHz, corners).map(Optional::of);
  }

  private <T> Optional<T> noted(Optional<T> found, String member, Object given, List<?> offered) {
    if (found.isEmpty()) {
      references.fault(
          QuestionFault.of(
                  pointer + member,
                  QuestionFault.Kind.UNKNOWN_VALUE,
                  "Neither " + microphone.id() + " nor its preamp can be set to that.")
              .found(given)
              .allowed(
                  offered.isEmpty()
                      ? "out"
                      : String.join(", ", offered.stream().map(String::valueOf).toList())));
    }
    return found;
  }
}
