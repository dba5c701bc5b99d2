package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;
import org.standoff.pairs.MidSide;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.Parameter;

/** Resolves the pair of a {@link GeometryQuestion} that gives the capsules themselves. */
final class CapsulesResolver {
  private static final String ID = "inline/capsules";

  private final References references;
  private final GeometryQuestion asked;

  CapsulesResolver(References references, GeometryQuestion asked) {
    this.references = references;
    this.asked = asked;
  }

  /** Empty where a fault was noted. */
  Optional<ResolvedPair> resolve(List<GivenCapsule> given, PairPlace place) {
    refuseLayout();
    List<Capsule> capsules = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      GivenCapsule one = given.get(i);
      polar(one, "/capsules/" + i).map(one::capsule).ifPresent(capsules::add);
    }
    if (capsules.size() < given.size()) {
      return Optional.empty();
    }
    return matrix(capsules).flatMap(matrix -> pair(capsules, matrix, place));
  }

  /** Inside there is a matrix for mid and side, and none for others; empty where it is missing. */
  private Optional<Optional<MidSide>> matrix(List<Capsule> capsules) {
    if (capsules.stream().noneMatch(one -> one.channel() == Channel.MID)) {
      return Optional.of(Optional.empty());
    }
    Double gain = asked.sideGain();
    if (gain == null) {
      references.fault(
          QuestionFault.of(
              "/side_gain",
              QuestionFault.Kind.MISSING,
              "Mid and side become left and right at a side gain: say which."));
      return Optional.empty();
    }
    return Optional.of(Optional.of(new MidSide(gain)));
  }

  private Optional<ResolvedPair> pair(
      List<Capsule> capsules, Optional<MidSide> matrix, PairPlace place) {
    PairParameters measures =
        matrix
            .map(mid -> PairParameters.NONE.with(Parameter.SIDE_GAIN, mid.sideGain()))
            .orElse(PairParameters.NONE);
    try {
      Pair pair =
          new Pair(capsules, matrix, Optional.empty(), Polar.DEFAULT_REJECTION_CAP_DB, place);
      return Optional.of(
          new ResolvedPair(
              ID, Optional.empty(), Optional.empty(), Optional.empty(), measures, pair, List.of()));
    } catch (IllegalArgumentException noPair) {
      references.fault(
          QuestionFault.of(
              "/capsules",
              QuestionFault.Kind.CONTRADICTION,
              "These capsules make no pair: " + noPair.getMessage() + "."));
      return Optional.empty();
    }
  }

  private void refuseLayout() {
    refuse("/pair", asked.pair());
    refuse("/microphone", asked.microphone());
    refuse("/pattern", asked.pattern());
    for (Map.Entry<Parameter, Double> given : PairResolver.given(asked).entrySet()) {
      if (given.getKey() != Parameter.SIDE_GAIN) {
        refuse("/" + given.getKey().id(), given.getValue());
      }
    }
  }

  private void refuse(String pointer, @Nullable Object given) {
    if (given != null) {
      references.fault(
          QuestionFault.of(
              pointer,
              QuestionFault.Kind.CONTRADICTION,
              "The capsules say this themselves: give it, or capsules."));
    }
  }

  private Optional<Polar> polar(GivenCapsule capsule, String pointer) {
    PatternName pattern = capsule.pattern();
    Double omniPart = capsule.omniPart();
    if (pattern != null && omniPart == null) {
      return Optional.of(pattern.ideal());
    }
    if (pattern == null && omniPart != null) {
      return Optional.of(Polar.firstOrder(omniPart));
    }
    references.fault(
        QuestionFault.of(
            pointer + "/pattern",
            pattern == null ? QuestionFault.Kind.MISSING : QuestionFault.Kind.CONTRADICTION,
            "Give a capsule's pattern or its omni_part, one of them."));
    return Optional.empty();
  }
}
