package org.standoff.answers.stereo;

import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Validity;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;

/**
 * A pair that is ready to be asked.
 *
 * @param id of the layout, or {@code inline/capsules}
 * @param layout empty for bare capsules
 * @param pattern of the open capsules; empty for bare capsules
 * @param microphoneId whose figures count; empty for the bare word
 * @param measures 0 for bare capsules
 * @param pair in its place
 * @param validity where it leaves what the layout is known for
 */
record ResolvedPair(
    String id,
    Optional<PairLayout> layout,
    Optional<PatternName> pattern,
    Optional<String> microphoneId,
    PairParameters measures,
    Pair pair,
    List<Validity> validity) {
  ResolvedPair {
    validity = List.copyOf(validity);
  }
}
