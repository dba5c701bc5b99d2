package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.kit.AvailableIn;
import org.standoff.answers.kit.FreeMicrophones;
import org.standoff.answers.kit.FreeUnits;
import org.standoff.chain.Microphone;
import org.standoff.pairs.fit.AtHand;

/** Resolves the microphones at hand of a {@link StereoFitQuestion}. */
final class AtHandResolver {
  private static final int USUAL_COUNT = 2;

  /** No layout needs more alike. */
  private static final int AS_MANY_AS_NEEDED = 3;

  private final References references;
  private final StereoFitQuestion asked;
  private final Assumptions assumptions;
  private final FreeMicrophones freeMicrophones;
  private Optional<String> kitRevision = Optional.empty();

  AtHandResolver(
      References references,
      StereoFitQuestion asked,
      Assumptions assumptions,
      FreeMicrophones freeMicrophones) {
    this.references = references;
    this.asked = asked;
    this.assumptions = assumptions;
    this.freeMicrophones = freeMicrophones;
  }

  /** State of the kit that what was resolved rests on, where the question asked for it. */
  Optional<String> kitRevision() {
    return kitRevision;
  }

  List<AtHand> resolve() {
    if (asked.microphones() != null && asked.pack() != null) {
      references.fault(
          QuestionFault.of(
              "/pack",
              QuestionFault.Kind.CONTRADICTION,
              "Give microphones or a pack, one of them."));
    }
    return free(all()).stream().flatMap(one -> allowed(one).stream()).toList();
  }

  private List<AtHand> all() {
    if (asked.microphones() != null) {
      return listed(asked.microphones());
    }
    if (asked.pack() != null || asked.available() != null) {
      assumptions.add(
          asked.available() == null
              ? "of each microphone there are as many as needed, matched"
              : "of each microphone there are as many as are free in the period");
      return references.all(Microphone.class, asked.pack(), "/pack").stream()
          .sorted(Comparator.comparing(Microphone::id))
          .map(microphone -> AtHand.of(microphone, AS_MANY_AS_NEEDED, true))
          .toList();
    }
    assumptions.add("microphones are ideal, in any pattern, as many as needed, matched");
    return List.of(AtHand.ideal());
  }

  private List<AtHand> listed(List<MicrophonesAtHand> listed) {
    List<AtHand> found = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      MicrophonesAtHand one = listed.get(i);
      int count = one.count() == null ? USUAL_COUNT : one.count();
      boolean matched = one.matched() != null && one.matched();
      references
          .resolve(Microphone.class, one.microphone(), "/microphones/" + i + "/microphone")
          .ifPresent(microphone -> found.add(AtHand.of(microphone.item(), count, matched)));
    }
    return found;
  }

  /** What is left where only units that are free may be used: a matched group before singles. */
  private List<AtHand> free(List<AtHand> all) {
    AvailableIn available = asked.available();
    if (available == null) {
      return all;
    }
    Optional<FreeUnits> free =
        freeMicrophones.find(
            references, available, all.stream().map(AtHand::microphoneId).toList(), "/available");
    kitRevision = free.map(FreeUnits::kitRevision);
    return free.map(units -> all.stream().flatMap(one -> left(one, units).stream()).toList())
        .orElse(all);
  }

  private static Optional<AtHand> left(AtHand one, FreeUnits free) {
    int group = free.largestGroup(one.microphoneId());
    boolean matched = group >= USUAL_COUNT && one.matched();
    int count = Math.min(one.count(), matched ? group : free.freeCount(one.microphoneId()));
    return count < 1
        ? Optional.empty()
        : Optional.of(
            new AtHand(
                one.microphoneId(),
                one.patterns(),
                one.midSideBody(),
                count,
                matched,
                one.rejectionCapDb()));
  }

  /** What is left of a model where only some patterns may be used. */
  private Optional<AtHand> allowed(AtHand one) {
    if (asked.patterns() == null) {
      return Optional.of(one);
    }
    AtHand left =
        new AtHand(
            one.microphoneId(),
            one.patterns().stream()
                .filter(choice -> asked.patterns().contains(choice.name()))
                .toList(),
            one.midSideBody(),
            one.count(),
            one.matched(),
            one.rejectionCapDb());
    return left.patterns().isEmpty() ? Optional.empty() : Optional.of(left);
  }
}
