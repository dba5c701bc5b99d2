package org.standoff.answers.floor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.PatternName;
import org.standoff.advice.Caution;
import org.standoff.answers.Basis;
import org.standoff.answers.Coordinates;
import org.standoff.floor.RemedyKind;

/**
 * The answer to a {@link BleedQuestion}. Levels are as the pattern hears them, re its axis, before
 * the fader; what is silent has no level.
 *
 * @param floor the resolved floor, defaults included
 * @param order of the reflections computed one by one
 * @param octavePaths what it cost
 * @param microphones in the order of the question
 * @param mix every source in the mix of all microphones at their faders
 * @param sharedSources pairs of microphones that hear one source that one of them is there for
 * @param cautions about the stands
 * @param basis what the answer rests on
 */
public record BleedAnswer(
    FloorAsAsked floor,
    int order,
    long octavePaths,
    List<HearingMicrophone> microphones,
    List<SourceInMixLine> mix,
    List<SharedSourceLine> sharedSources,
    List<Caution> cautions,
    Basis basis) {

  /** One microphone: wanted against unwanted, and what would help. */
  public record HearingMicrophone(
      String id,
      OptionalDouble wantedDirectDbSpl,
      OptionalDouble wantedTotalDbSpl,
      OptionalDouble unwantedDirectDbSpl,
      OptionalDouble unwantedRoomDbSpl,
      OptionalDouble unwantedDbSpl,
      OptionalDouble isolationDb,
      OptionalDouble isolationSpreadDb,
      boolean roomDominates,
      String because,
      double faderDb,
      OptionalDouble wantedInMixDb,
      OptionalDouble unwantedInMixDb,
      List<HeardSourceLine> heard,
      List<OffenderLine> offenders,
      Optional<List<RemedyLine>> remedies) {}

  /** One cell: what a microphone hears of a source. */
  public record HeardSourceLine(
      String source,
      boolean wanted,
      double pathM,
      double arrivalMs,
      double microphoneAngleDeg,
      double sourceAngleDeg,
      boolean oppositePolarity,
      OptionalDouble directDbSpl,
      OptionalDouble reflectionsDbSpl,
      OptionalDouble lateDbSpl,
      OptionalDouble totalDbSpl,
      OptionalDouble totalDba,
      OptionalDouble directOverRoomDb,
      Optional<CellOctaves> octaves) {}

  /** A cell per octave, and the parts that its direct sound adds up from. */
  public record CellOctaves(
      Map<String, Double> directDbSpl,
      Map<String, Double> reflectionsDbSpl,
      Map<String, Double> lateDbSpl,
      Map<String, Double> totalDbSpl,
      Map<String, Double> soundPowerDb,
      double spreadingDb,
      Map<String, Double> sourceDirectivityDb,
      Map<String, Double> patternDb,
      Map<String, Double> airDb,
      Map<String, Double> barrierDb) {}

  /** An unwanted source, loudest first. */
  public record OffenderLine(
      String source,
      OptionalDouble totalDbSpl,
      OptionalDouble directDbSpl,
      OptionalDouble roomDbSpl,
      OptionalDouble belowWantedDb,
      boolean direct,
      double distanceRatio,
      double ratioPromisesDb) {}

  /** Something that would help, computed anew with the change in place. */
  public record RemedyLine(
      RemedyKind kind,
      String appliesTo,
      String what,
      OptionalDouble gainDb,
      OptionalDouble isolationDb,
      OptionalDouble wantedDbSpl,
      Optional<ChangedMicrophone> microphone,
      Optional<BarrierPlace> barrier) {}

  /** How a microphone stands after a remedy. */
  public record ChangedMicrophone(
      Coordinates positionM, double azimuthDeg, double elevationDeg, PatternName pattern) {}

  /** A source in the mix, through its own microphones and through all others. */
  public record SourceInMixLine(String source, OptionalDouble ownDb, OptionalDouble bleedDb) {}

  /** The comb of two microphones that hear one source. */
  public record SharedSourceLine(
      String source,
      String first,
      String later,
      double levelDifferenceDb,
      double delayMs,
      boolean oppositePolarity,
      double peakDb,
      OptionalDouble dipDb,
      OptionalDouble rippleDb,
      OptionalDouble firstNotchHz) {}
}
