package org.standoff.pairs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;

/**
 * A way to set up two or three capsules, as a catalogue file describes it.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the trade's name
 * @param technique its family
 * @param capsules the capsules as shares of the parameters
 * @param patterns what the open capsules may be, the usual one first
 * @param parameters the range of each measure that it has; others are 0
 * @param matrixed true when mid and side go through a matrix
 * @param source who published it
 * @param monoNote what folding to mono does to it
 * @param roomNote how it takes the room
 */
public record PairLayout(
    String id,
    String title,
    Technique technique,
    List<CapsulePlan> capsules,
    List<PatternName> patterns,
    Map<Parameter, ParameterRange> parameters,
    boolean matrixed,
    String source,
    String monoNote,
    String roomNote) {

  public PairLayout {
    capsules = List.copyOf(capsules);
    patterns = List.copyOf(patterns);
    parameters = Map.copyOf(parameters);
    if (patterns.isEmpty()) {
      throw new IllegalArgumentException("a layout names at least one pattern");
    }
  }

  /** What a measure may be; fixed at 0 when the layout doesn't have it. */
  public ParameterRange range(Parameter parameter) {
    return parameters.getOrDefault(parameter, ParameterRange.fixed(0));
  }

  /** The usual value of every measure. */
  public PairParameters usual() {
    PairParameters usual = PairParameters.NONE;
    for (Map.Entry<Parameter, ParameterRange> entry : parameters.entrySet()) {
      usual = usual.with(entry.getKey(), entry.getValue().usual());
    }
    return usual;
  }

  /**
   * The pair of given measures; whether they lie in the layout's ranges is the caller's to ask.
   *
   * @param chosen pattern of the open capsules
   * @param rejectionCapDb deepest rejection that is believed
   */
  public Pair pair(PairParameters measures, Polar chosen, double rejectionCapDb, PairPlace place) {
    double discDiameterM = measures.get(Parameter.DISC_DIAMETER);
    return new Pair(
        capsules.stream().map(plan -> plan.capsule(measures, chosen)).toList(),
        matrixed ? Optional.of(new MidSide(measures.get(Parameter.SIDE_GAIN))) : Optional.empty(),
        discDiameterM > 0 ? Optional.of(new Disc(discDiameterM / 2)) : Optional.empty(),
        rejectionCapDb,
        place);
  }

  /** The pair with usual measures and pattern, in {@code place}. */
  public Pair usualPair(PairPlace place) {
    return pair(usual(), patterns.get(0).ideal(), Polar.DEFAULT_REJECTION_CAP_DB, place);
  }
}
