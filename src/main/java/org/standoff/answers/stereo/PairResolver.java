package org.standoff.answers.stereo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.Validity;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.chain.Microphone;
import org.standoff.chain.PatternFigures;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.ParameterRange;

/** Resolves the pair of a {@link GeometryQuestion} that names a layout. */
final class PairResolver {
  private final References references;
  private final GeometryQuestion asked;
  private final List<Validity> validity = new ArrayList<>();

  private record Pattern(
      PatternName name, Polar polar, double rejectionCapDb, Optional<String> microphoneId) {}

  PairResolver(References references, GeometryQuestion asked) {
    this.references = references;
    this.asked = asked;
  }

  /** Empty where a fault was noted. */
  Optional<ResolvedPair> resolve(PairPlace place) {
    if (asked.capsules() != null) {
      return new CapsulesResolver(references, asked).resolve(asked.capsules(), place);
    }
    if (asked.pair() == null) {
      references.fault(
          QuestionFault.of(
              "/pair", QuestionFault.Kind.MISSING, "Give a pair, or the capsules themselves."));
      return Optional.empty();
    }
    Optional<Resolved<PairLayout>> layout =
        references.resolve(PairLayout.class, asked.pair(), "/pair");
    if (layout.isEmpty()) {
      return Optional.empty();
    }
    PairParameters measures = measures(layout.get().item());
    return pattern(layout.get().item())
        .flatMap(pattern -> pair(layout.get(), measures, pattern, place));
  }

  private Optional<ResolvedPair> pair(
      Resolved<PairLayout> layout, PairParameters measures, Pattern pattern, PairPlace place) {
    try {
      return Optional.of(
          new ResolvedPair(
              layout.id(),
              Optional.of(layout.item()),
              Optional.of(pattern.name()),
              pattern.microphoneId(),
              measures,
              layout.item().pair(measures, pattern.polar(), pattern.rejectionCapDb(), place),
              validity));
    } catch (IllegalArgumentException contradiction) {
      references.fault(
          QuestionFault.of(
              "/pair",
              QuestionFault.Kind.CONTRADICTION,
              "With these measures there is no such pair: " + contradiction.getMessage() + "."));
      return Optional.empty();
    }
  }

  private PairParameters measures(PairLayout layout) {
    PairParameters measures = layout.usual();
    for (Map.Entry<Parameter, Double> given : given(asked).entrySet()) {
      Parameter parameter = given.getKey();
      double value = given.getValue();
      if (!layout.parameters().containsKey(parameter)) {
        references.fault(
            QuestionFault.of(
                    "/" + parameter.id(),
                    QuestionFault.Kind.CONTRADICTION,
                    layout.id() + " has no such measure.")
                .found(value)
                .allowed(names(layout)));
      } else {
        measures = measures.with(parameter, value);
        outside(layout, parameter, value).ifPresent(validity::add);
      }
    }
    return measures;
  }

  private static String names(PairLayout layout) {
    return layout.parameters().isEmpty()
        ? "no measure"
        : String.join(
            ", ", layout.parameters().keySet().stream().sorted().map(Parameter::id).toList());
  }

  private static Optional<Validity> outside(PairLayout layout, Parameter parameter, double value) {
    ParameterRange range = layout.range(parameter);
    return range.contains(value)
        ? Optional.empty()
        : Optional.of(
            new Validity(
                "measure-outside-layout",
                String.format(
                    Locale.ROOT,
                    "%s of %.4g lies outside what %s is known for, %.4g to %.4g: notes and"
                        + " published figures of the layout don't hold for it",
                    parameter.id(),
                    value,
                    layout.id(),
                    range.least(),
                    range.most())));
  }

  static Map<Parameter, Double> given(GeometryQuestion asked) {
    Map<Parameter, Double> given = new EnumMap<>(Parameter.class);
    put(given, Parameter.SPACING, asked.spacingM());
    put(given, Parameter.ANGLE, asked.angleDeg());
    put(given, Parameter.FORWARD, asked.forwardM());
    put(given, Parameter.SIDE_GAIN, asked.sideGain());
    put(given, Parameter.DISC_DIAMETER, asked.discDiameterM());
    return given;
  }

  private static void put(
      Map<Parameter, Double> given, Parameter parameter, @Nullable Double value) {
    if (value != null) {
      given.put(parameter, value);
    }
  }

  private Optional<Pattern> pattern(PairLayout layout) {
    JsonNode microphone = asked.microphone();
    Optional<Pattern> pattern =
        microphone == null
            ? Optional.of(bare(asked.pattern() == null ? usual(layout) : asked.pattern()))
            : references
                .resolve(Microphone.class, microphone, "/microphone")
                .flatMap(found -> of(found, layout));
    pattern
        .filter(chosen -> !layout.patterns().contains(chosen.name()))
        .ifPresent(
            chosen ->
                validity.add(
                    new Validity(
                        "pattern-outside-layout",
                        "%s isn't known with %s capsules: its notes and published figures don't"
                                .formatted(layout.id(), chosen.name().id())
                            + " hold for it")));
    return pattern;
  }

  private static PatternName usual(PairLayout layout) {
    return layout.patterns().get(0);
  }

  private static Pattern bare(PatternName name) {
    return new Pattern(name, name.ideal(), Polar.DEFAULT_REJECTION_CAP_DB, Optional.empty());
  }

  private Optional<Pattern> of(Resolved<Microphone> microphone, PairLayout layout) {
    List<PatternFigures> known = microphone.item().outputs().get(0).patterns();
    List<PatternName> wanted =
        asked.pattern() == null ? layout.patterns() : List.of(asked.pattern());
    for (PatternName name : wanted) {
      for (PatternFigures figures : known) {
        if (figures.name() == name) {
          return Optional.of(
              new Pattern(
                  name,
                  figures.polar(),
                  microphone.item().rejectionCapDb(),
                  Optional.of(microphone.id())));
        }
      }
    }
    references.fault(
        QuestionFault.of(
                asked.pattern() == null ? "/microphone" : "/pattern",
                QuestionFault.Kind.CONTRADICTION,
                microphone.id() + " has no pattern that is wanted here.")
            .found(String.join(", ", wanted.stream().map(PatternName::id).toList()))
            .allowed(
                String.join(", ", known.stream().map(figures -> figures.name().id()).toList())));
    return Optional.empty();
  }
}
