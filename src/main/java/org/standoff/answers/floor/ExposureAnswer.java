package org.standoff.answers.floor;

import java.util.List;
import java.util.Optional;
import org.standoff.answers.Basis;
import org.standoff.answers.Range;
import org.standoff.floor.EuActionValue;
import org.standoff.floor.ExposureRule;
import org.standoff.floor.HearingCaution;

/**
 * The answer to an {@link ExposureQuestion}.
 *
 * @param floor the resolved floor, defaults included
 * @param order of the reflections computed one by one
 * @param seats in the order asked for
 * @param rules what each rule counts
 * @param euValues what Directive 2003/10/EC names, article 3
 * @param cautions usual practice, and whose word counts
 * @param basis what the answer rests on
 */
public record ExposureAnswer(
    FloorAsAsked floor,
    int order,
    List<SeatLine> seats,
    List<RuleLine> rules,
    List<EuValueLine> euValues,
    List<HearingCaution> cautions,
    Basis basis) {

  /** One seat's day; a peak is of the direct sound, without the C weighting that the rules mean. */
  public record SeatLine(
      String id,
      List<PartLine> parts,
      Optional<Range> dailyExposureDba,
      List<DoseLine> doses,
      Optional<Range> peakDbSpl,
      List<EuActionValue> euValuesReached,
      List<EuActionValue> euValuesPerhapsReached) {}

  /** Level of a part of the day. */
  public record PartLine(String title, double hours, Optional<Range> levelDba) {}

  /** Dose of one rule, per cent of its allowed day. */
  public record DoseLine(
      ExposureRule rule, double lowPercent, double typicalPercent, double highPercent) {}

  /** A value of the directive: daily exposure level, and C-weighted peak pressure. */
  public record EuValueLine(EuActionValue value, double dailyExposureDba, double peakPa) {}

  /** A rule. */
  public record RuleLine(ExposureRule rule, double criterionDba, double exchangeDb) {}
}
