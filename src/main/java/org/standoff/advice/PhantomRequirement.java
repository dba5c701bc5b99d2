package org.standoff.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.chain.Microphone;
import org.standoff.chain.Phantom;
import org.standoff.chain.Powering;

/** A microphone that needs phantom gets it, and enough of it. */
final class PhantomRequirement implements Requirement {
  private static final String NAME = "phantom";

  @Override
  public Optional<Refusal> refusal(Microphone microphone, Question question) {
    if (microphone.powering().need() != Powering.Need.P48) {
      return Optional.empty();
    }
    if (!question.preamp().phantomAvailable() || question.phantom() == LinePhantom.OFF) {
      return Optional.of(
          new Refusal(
              microphone.id(),
              microphone.title(),
              NAME,
              "phantom_v",
              OptionalDouble.of(0),
              OptionalDouble.of(Phantom.SUPPLY_V),
              "it needs phantom and the line has none"));
    }
    OptionalDouble current = microphone.powering().currentMa();
    if (current.isPresent() && current.getAsDouble() > Phantom.GREATEST_CURRENT_MA) {
      return Optional.of(
          new Refusal(
              microphone.id(),
              microphone.title(),
              NAME,
              "current_ma",
              current,
              OptionalDouble.of(Phantom.GREATEST_CURRENT_MA),
              "it draws more than a P48 line gives"));
    }
    return Optional.empty();
  }
}
