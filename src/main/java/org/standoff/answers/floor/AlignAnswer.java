package org.standoff.answers.floor;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.advice.Caution;
import org.standoff.answers.Basis;
import org.standoff.answers.Coordinates;
import org.standoff.answers.Position;
import org.standoff.floor.DelayStrategy;

/**
 * The answer to an {@link AlignQuestion}.
 *
 * @param floor the resolved floor, defaults included
 * @param source whose arrivals these are
 * @param sampleRateHz of the samples
 * @param coldestC of the drift
 * @param warmestC of the drift
 * @param arrivals in order of arrival
 * @param strategies what delays would do, side by side; none is picked
 * @param equalPath where a pair would have equal paths
 * @param cautions about the stands
 * @param basis what the answer rests on
 */
public record AlignAnswer(
    FloorAsAsked floor,
    String source,
    double sampleRateHz,
    double coldestC,
    double warmestC,
    List<ArrivalLine> arrivals,
    List<StrategyLine> strategies,
    Optional<EqualPath> equalPath,
    List<Caution> cautions,
    Basis basis) {

  /** One microphone. */
  public record ArrivalLine(
      String microphone,
      double pathM,
      double arrivalMs,
      double arrivalSamples,
      double afterFirstMs,
      double afterFirstSamples,
      double driftSamples,
      OptionalDouble levelDbSpl,
      PolarityLine polarity,
      Optional<CombLine> combWithFirst,
      PutBackLine putBack) {}

  /** Whether to invert it against the first, seen two ways. */
  public record PolarityLine(
      boolean invertBySide,
      boolean invertByLowSum,
      boolean agreed,
      OptionalDouble lowSumNormalDb,
      OptionalDouble lowSumInvertedDb) {}

  /** What the mono sum of two does. */
  public record CombLine(
      OptionalDouble levelDifferenceDb,
      double delayMs,
      boolean oppositePolarity,
      OptionalDouble rippleDb,
      OptionalDouble firstNotchHz,
      OptionalDouble notchSpacingHz) {}

  /** How exactly it must be put back. */
  public record PutBackLine(
      @JsonProperty("for_1_db_mm") OptionalDouble for1DbMm,
      double forOneSampleMm,
      @JsonProperty("for_1_db_deg") OptionalDouble for1DbDeg) {}

  /** One way to delay. */
  public record StrategyLine(DelayStrategy strategy, List<DelayedLine> microphones) {}

  /** One microphone under it. */
  public record DelayedLine(
      String microphone,
      double delayMs,
      double delaySamples,
      double afterPairMs,
      Optional<CombLine> combWithPair,
      OptionalDouble lowSumDb) {}

  /** Where a pair would have equal paths to a place; moving one of the two is enough. */
  public record EqualPath(
      Coordinates from,
      double leftM,
      double rightM,
      double levelDifferenceDb,
      double leadMs,
      double leadSamples,
      Position leftEqualM,
      Position rightEqualM) {}
}
