package org.standoff.advice;

import java.util.Optional;
import org.standoff.chain.Microphone;

/** Something that a microphone must meet before its settings are looked at. */
interface Requirement {

  /** Why the microphone does not meet it; empty where it does. */
  Optional<Refusal> refusal(Microphone microphone, Question question);
}
