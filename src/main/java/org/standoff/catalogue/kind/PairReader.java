package org.standoff.catalogue.kind;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.PatternName;
import org.standoff.catalogue.Sheet;
import org.standoff.pairs.CapsulePlan;
import org.standoff.pairs.Channel;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.Technique;

/** Makes a stereo layout of its sheet. Also reads what a question describes in place of an id. */
public final class PairReader {

  private PairReader() {}

  /**
   * @param id of the layout, or {@code inline}
   * @param sheet that has passed the schema of pairs
   * @throws IllegalArgumentException when the capsules don't make a pair
   */
  public static PairLayout read(String id, Sheet sheet) {
    List<CapsulePlan> capsules = sheet.list("capsules", PairReader::capsule);
    PairLayout layout =
        new PairLayout(
            id,
            sheet.text("title"),
            sheet.word("technique", Technique::ofId),
            capsules,
            sheet.texts("patterns").stream().map(PairReader::pattern).toList(),
            sheet.object("parameters", PairReader::parameters),
            capsules.stream().anyMatch(plan -> plan.channel() == Channel.MID),
            sheet.text("source"),
            sheet.text("mono"),
            sheet.text("room"));
    // Only set up does it show whether the capsules make a pair.
    layout.usualPair(PairPlace.ORIGIN);
    return layout;
  }

  private static CapsulePlan capsule(Sheet capsule) {
    return new CapsulePlan(
        capsule.word("channel", Channel::ofId),
        capsule.number("spacings"),
        capsule.number("forwards"),
        capsule.number("angles"),
        capsule.number("aim_deg"),
        capsule.has("pattern")
            ? Optional.of(capsule.word("pattern", PatternName::ofId))
            : Optional.empty());
  }

  private static Map<Parameter, ParameterRange> parameters(Sheet parameters) {
    Map<Parameter, ParameterRange> ranges = new EnumMap<>(Parameter.class);
    for (Parameter parameter : Parameter.all()) {
      parameters
          .optionalObject(parameter.id(), PairReader::range)
          .ifPresent(range -> ranges.put(parameter, range));
    }
    return ranges;
  }

  private static ParameterRange range(Sheet range) {
    return new ParameterRange(range.number("least"), range.number("usual"), range.number("most"));
  }

  private static PatternName pattern(String name) {
    return PatternName.ofId(name)
        .orElseThrow(() -> new IllegalArgumentException("'" + name + "' is no pattern"));
  }
}
