package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.advice.Refusal;
import org.standoff.answers.kit.FreeUnits;
import org.standoff.chain.Microphone;

/**
 * The microphones that may be ranked.
 *
 * @param microphones they
 * @param notFree those that were named, but of which too few units are free
 * @param kitRevision state of the kit, where the question asked for what is free
 */
record Candidates(
    Collection<Microphone> microphones, List<Refusal> notFree, Optional<String> kitRevision) {

  /** All of them, whether free or not. */
  static Candidates all(Collection<Microphone> named) {
    return new Candidates(named, List.of(), Optional.empty());
  }

  /**
   * Those of which enough units are free.
   *
   * @param wanted units that the line needs
   */
  static Candidates free(Collection<Microphone> named, FreeUnits free, int wanted) {
    List<Microphone> left = new ArrayList<>();
    List<Refusal> notFree = new ArrayList<>();
    for (Microphone microphone : named) {
      int count = free.freeCount(microphone.id());
      if (count >= wanted) {
        left.add(microphone);
      } else {
        notFree.add(refusal(microphone, count, free.unitCount(microphone.id()), wanted));
      }
    }
    return new Candidates(left, notFree, Optional.of(free.kitRevision()));
  }

  private static Refusal refusal(Microphone microphone, int free, int owned, int wanted) {
    return new Refusal(
        microphone.id(),
        microphone.title(),
        "free",
        "free_count",
        OptionalDouble.of(free),
        OptionalDouble.of(wanted),
        owned == 0
            ? "no house that lends in the period has one"
            : String.format(
                Locale.ROOT,
                "%d of %d units are free in the period, %d wanted",
                free,
                owned,
                wanted));
  }
}
