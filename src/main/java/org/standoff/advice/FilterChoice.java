package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.HighPass;
import org.standoff.chain.Filter;
import org.standoff.chain.FilterPlace;
import org.standoff.chain.Microphone;
import org.standoff.chain.Preamp;

/**
 * The style's filter rule: the highest corner whose own loss at the lowest wanted note is at most
 * the allowed loss. The proximity rise is not set against it. A corner of the microphone is
 * preferred to the same corner of the preamp, because it comes earlier.
 */
final class FilterChoice {
  private FilterChoice() {}

  /** All filters that the chain offers, the microphone's first. */
  static List<Filter> offered(Microphone microphone, Preamp preamp) {
    List<Filter> offered = new ArrayList<>(microphone.highPasses());
    for (HighPass highPass : preamp.highPasses()) {
      offered.add(new Filter(highPass, FilterPlace.PREAMP));
    }
    return offered;
  }

  /** The filter that the rule chooses; empty for flat. */
  static Optional<Filter> choose(Microphone microphone, Question question) {
    Filter best = null;
    for (Filter filter : offered(microphone, question.preamp())) {
      boolean allowed =
          Assessor.filterLossDb(Optional.of(filter), question.wantedFromHz())
              <= question.style().allowedFilterLossDb();
      if (allowed && (best == null || filter.highPass().cornerHz() > best.highPass().cornerHz())) {
        best = filter;
      }
    }
    return Optional.ofNullable(best);
  }
}
