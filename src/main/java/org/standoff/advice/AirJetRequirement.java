package org.standoff.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.AirJet;
import org.standoff.chain.Microphone;

/** No ribbon where air moves strongly: the strip stretches or tears (common practice). */
final class AirJetRequirement implements Requirement {
  @Override
  public Optional<Refusal> refusal(Microphone microphone, Question question) {
    if (!microphone.transducer().ribbon() || question.placement().airJet() != AirJet.STRONG) {
      return Optional.empty();
    }
    return Optional.of(
        new Refusal(
            microphone.id(),
            microphone.title(),
            "air-jet",
            "air_jet",
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "air moves strongly here and a ribbon does not bear that"));
  }
}
