package org.standoff.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.chain.Microphone;
import org.standoff.chain.Phantom;
import org.standoff.chain.Powering;

/** A microphone that phantom may destroy does not go on a line that has it. */
final class NoPhantomRequirement implements Requirement {
  @Override
  public Optional<Refusal> refusal(Microphone microphone, Question question) {
    if (microphone.powering().need() != Powering.Need.NONE_AND_NEVER
        || question.phantom() != LinePhantom.ON) {
      return Optional.empty();
    }
    return Optional.of(
        new Refusal(
            microphone.id(),
            microphone.title(),
            "no-phantom",
            "phantom_v",
            OptionalDouble.of(Phantom.SUPPLY_V),
            OptionalDouble.of(0),
            "phantom is on in this line's bank and may destroy it"));
  }
}
