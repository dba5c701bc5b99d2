package org.standoff.answers.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;

/** Resolves which microphones are ranked, and given settings of the one that they are given for. */
final class MicrophonesResolver {
  private final References references;
  private final SettingsQuestion asked;
  private final Assumptions assumptions;

  MicrophonesResolver(References references, SettingsQuestion asked, Assumptions assumptions) {
    this.references = references;
    this.asked = asked;
    this.assumptions = assumptions;
  }

  /** The microphones to rank. */
  Collection<Microphone> candidates() {
    int ways =
        (asked.microphone() == null ? 0 : 1)
            + (asked.microphones() == null ? 0 : 1)
            + (asked.pack() == null ? 0 : 1);
    if (ways > 1) {
      references.fault(
          QuestionFault.of(
              asked.pack() == null ? "/microphones" : "/pack",
              QuestionFault.Kind.CONTRADICTION,
              "Give microphone, microphones or pack, one of them."));
      return List.of();
    }
    if (asked.settings() != null && asked.microphone() == null) {
      references.fault(
          QuestionFault.of(
              "/microphone",
              QuestionFault.Kind.MISSING,
              "Settings are compared on one microphone: say which."));
    }
    if (asked.microphone() != null) {
      return byReference(List.of(asked.microphone()), "/microphone", false);
    }
    if (asked.microphones() != null) {
      return byReference(asked.microphones(), "/microphones", true);
    }
    if (asked.pack() == null) {
      assumptions.add("every microphone of the catalogue is looked at");
    }
    return references.all(Microphone.class, asked.pack(), "/pack");
  }

  private Collection<Microphone> byReference(
      List<JsonNode> nodes, String pointer, boolean indexed) {
    // the same microphone named twice is one candidate
    Map<String, Microphone> found = new LinkedHashMap<>();
    for (int i = 0; i < nodes.size(); i++) {
      references
          .resolve(Microphone.class, nodes.get(i), indexed ? pointer + "/" + i : pointer)
          .ifPresent(resolved -> found.put(resolved.id(), resolved.item()));
    }
    return found.values();
  }

  /** Given settings on the one microphone; a fault where it or the preamp can't be set to that. */
  List<ResolvedSettingsQuestion.Given> given(Collection<Microphone> candidates, Preamp preamp) {
    List<ResolvedSettingsQuestion.Given> all = new ArrayList<>();
    if (asked.settings() == null || candidates.size() != 1) {
      return all;
    }
    Microphone microphone = candidates.iterator().next();
    for (int i = 0; i < asked.settings().size(); i++) {
      GivenSettings given = asked.settings().get(i);
      OptionalDouble gainDb =
          given.gainDb() == null ? OptionalDouble.empty() : OptionalDouble.of(given.gainDb());
      new GivenSettingsResolver(references, microphone, preamp, "/settings/" + i)
          .resolve(given)
          .map(settings -> new ResolvedSettingsQuestion.Given(microphone, settings, gainDb))
          .ifPresent(all::add);
    }
    return all;
  }
}
