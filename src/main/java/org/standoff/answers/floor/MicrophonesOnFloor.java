package org.standoff.answers.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.SourceSide;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.catalogue.NearMiss;
import org.standoff.chain.Microphone;
import org.standoff.chain.MicrophoneOutput;
import org.standoff.chain.PatternFigures;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorPattern;

/** Resolves the microphones of a floor. */
final class MicrophonesOnFloor {
  private final References references;
  private final Assumptions assumptions;
  private final Map<String, Point3> sources = new LinkedHashMap<>();

  MicrophonesOnFloor(
      References references, Assumptions assumptions, List<ResolvedFloor.Source> sources) {
    this.references = references;
    this.assumptions = assumptions;
    sources.forEach(one -> this.sources.put(one.floor().id(), one.floor().position()));
  }

  /** The pattern in use, what else the body can be switched to, and how deep its nulls are. */
  private record Patterns(FloorPattern used, List<FloorPattern> others, double rejectionCapDb) {}

  List<ResolvedFloor.Microphone> resolve(@Nullable List<StandingMicrophone> asked) {
    List<ResolvedFloor.Microphone> found = new ArrayList<>();
    List<StandingMicrophone> standing = asked == null ? List.of() : asked;
    for (int i = 0; i < standing.size(); i++) {
      one(standing.get(i), AskedFloor.POINTER + "/microphones/" + i).ifPresent(found::add);
    }
    return found;
  }

  private Optional<ResolvedFloor.Microphone> one(StandingMicrophone asked, String pointer) {
    List<String> wanted = asked.wanted() == null ? List.of() : asked.wanted();
    for (int i = 0; i < wanted.size(); i++) {
      known(wanted.get(i), pointer + "/wanted/" + i);
    }
    Direction aim = aim(asked, wanted, pointer);
    if (asked.microphone() == null) {
      return bare(asked, pointer).map(p -> standing(asked, Optional.empty(), p, aim, pointer));
    }
    return references
        .resolve(Microphone.class, asked.microphone(), pointer + "/microphone")
        .flatMap(
            resolved ->
                ofBody(asked, resolved, pointer)
                    .map(p -> standing(asked, Optional.of(resolved), p, aim, pointer)));
  }

  private static ResolvedFloor.Microphone standing(
      StandingMicrophone asked,
      Optional<Resolved<Microphone>> body,
      Patterns patterns,
      Direction aim,
      String pointer) {
    return new ResolvedFloor.Microphone(
        body.map(Resolved::id),
        new FloorMicrophone(
            asked.id(),
            body.map(found -> found.item().title()).orElse(asked.id()),
            asked.positionM().point(),
            aim,
            patterns.used(),
            patterns.others(),
            patterns.rejectionCapDb(),
            asked.faderDb() == null ? 0 : asked.faderDb(),
            asked.wanted() == null ? Set.of() : Set.copyOf(asked.wanted()),
            asked.side() == null ? SourceSide.REFERENCE : asked.side()),
        pointer);
  }

  private Optional<Patterns> bare(StandingMicrophone asked, String pointer) {
    if (asked.pattern() == null) {
      references.fault(
          QuestionFault.of(
              pointer + "/pattern",
              QuestionFault.Kind.MISSING,
              "Give a microphone, or at least its pattern."));
      return Optional.empty();
    }
    assumptions.add(
        "%s is a bare %s whose nulls are %.0f dB deep (common practice)",
        asked.id(), asked.pattern().id(), Polar.DEFAULT_REJECTION_CAP_DB);
    List<PatternName> others = asked.otherPatterns() == null ? List.of() : asked.otherPatterns();
    return Optional.of(
        new Patterns(
            FloorPattern.ideal(asked.pattern()),
            others.stream()
                .filter(other -> other != asked.pattern())
                .distinct()
                .map(FloorPattern::ideal)
                .toList(),
            Polar.DEFAULT_REJECTION_CAP_DB));
  }

  private Optional<Patterns> ofBody(
      StandingMicrophone asked, Resolved<Microphone> body, String pointer) {
    if (asked.otherPatterns() != null) {
      references.fault(
          QuestionFault.of(
              pointer + "/other_patterns",
              QuestionFault.Kind.CONTRADICTION,
              "A microphone's patterns stand in its file; leave them out."));
    }
    return output(asked, body, pointer)
        .flatMap(
            output -> pattern(asked, body, output, pointer).map(used -> of(body, output, used)));
  }

  private static Patterns of(
      Resolved<Microphone> body, MicrophoneOutput output, PatternFigures used) {
    return new Patterns(
        floor(used),
        output.patterns().stream()
            .filter(other -> other != used)
            .map(MicrophonesOnFloor::floor)
            .toList(),
        body.item().rejectionCapDb());
  }

  private static FloorPattern floor(PatternFigures figures) {
    return new FloorPattern(figures.name(), figures.polar(), figures.omniPartPerOctave());
  }

  private Optional<MicrophoneOutput> output(
      StandingMicrophone asked, Resolved<Microphone> body, String pointer) {
    List<MicrophoneOutput> outputs = body.item().outputs();
    if (asked.output() == null) {
      if (outputs.size() > 1) {
        assumptions.add("of %s the output '%s' is meant", asked.id(), outputs.get(0).id());
      }
      return Optional.of(outputs.get(0));
    }
    List<String> ids = outputs.stream().map(MicrophoneOutput::id).toList();
    if (!ids.contains(asked.output())) {
      references.fault(unknown(pointer + "/output", "no such output", body, asked.output(), ids));
      return Optional.empty();
    }
    return Optional.of(outputs.get(ids.indexOf(asked.output())));
  }

  private Optional<PatternFigures> pattern(
      StandingMicrophone asked,
      Resolved<Microphone> body,
      MicrophoneOutput output,
      String pointer) {
    List<PatternFigures> patterns = output.patterns();
    if (asked.pattern() == null) {
      if (patterns.size() > 1) {
        assumptions.add("%s is set to %s", asked.id(), patterns.get(0).name().id());
      }
      return Optional.of(patterns.get(0));
    }
    Optional<PatternFigures> found =
        patterns.stream().filter(one -> one.name() == asked.pattern()).findFirst();
    if (found.isEmpty()) {
      references.fault(
          unknown(
              pointer + "/pattern",
              "no such pattern",
              body,
              asked.pattern().id(),
              patterns.stream().map(one -> one.name().id()).toList()));
    }
    return found;
  }

  private static QuestionFault unknown(
      String pointer, String what, Resolved<Microphone> body, String found, List<String> allowed) {
    return QuestionFault.of(
            pointer, QuestionFault.Kind.UNKNOWN_VALUE, body.id() + " has " + what + ".")
        .found(found)
        .allowed(String.join(", ", allowed))
        .suggestion(NearMiss.of(found, allowed));
  }

  private Direction aim(StandingMicrophone asked, List<String> wanted, String pointer) {
    boolean angles = asked.azimuthDeg() != null || asked.elevationDeg() != null;
    if (asked.aimAt() != null) {
      if (angles) {
        references.fault(
            QuestionFault.of(
                pointer + "/aim_at",
                QuestionFault.Kind.CONTRADICTION,
                "Aim it at a source or by angles, one of them."));
      }
      return known(asked.aimAt(), pointer + "/aim_at")
          .map(at -> asked.positionM().point().directionTo(at))
          .orElse(Direction.FRONT);
    }
    if (angles) {
      return new Direction(
          asked.azimuthDeg() == null ? 0 : asked.azimuthDeg(),
          asked.elevationDeg() == null ? 0 : asked.elevationDeg());
    }
    Point3 first = wanted.isEmpty() ? null : sources.get(wanted.get(0));
    if (first == null) {
      assumptions.add("%s looks straight to the front", asked.id());
      return Direction.FRONT;
    }
    assumptions.add("%s looks at %s", asked.id(), wanted.get(0));
    return asked.positionM().point().directionTo(first);
  }

  private Optional<Point3> known(String source, String pointer) {
    Point3 position = sources.get(source);
    if (position == null) {
      references.fault(
          QuestionFault.of(
                  pointer, QuestionFault.Kind.UNKNOWN_VALUE, "No such source is on this floor.")
              .found(source)
              .allowed(String.join(", ", sources.keySet()))
              .suggestion(NearMiss.of(source, sources.keySet())));
    }
    return Optional.ofNullable(position);
  }
}
