package org.standoff.answers.stereo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Caution;
import org.standoff.answers.Basis;
import org.standoff.pairs.fit.GivesUp;

/**
 * The answer to a {@link StereoFitQuestion}.
 *
 * @param solvedBy id of the model by which the measures were solved
 * @param solutions best first
 * @param solutionCount how many there are; more than are listed where there are many
 * @param whyNot for each layout and pattern that can't do it, with the figure that fails
 * @param whyNotCount how many there are
 * @param cautions about the place
 * @param basis what the answer rests on
 */
public record StereoFitAnswer(
    String solvedBy,
    List<FittedPair> solutions,
    int solutionCount,
    List<UnfitPair> whyNot,
    int whyNotCount,
    List<Caution> cautions,
    Basis basis) {

  /**
   * A pair that does what was wished.
   *
   * @param rank 1 for the best; equals share one
   * @param pair id of the layout
   * @param pattern of the open capsules
   * @param omniPart its coefficient
   * @param microphones sets that make it, best first
   * @param parameters solved measures, units in their names
   * @param distanceM solved, horizontally, from the middle of the players
   * @param fillPct share of the base that the players fill
   * @param worstMonoLossDb of any player
   * @param spreadPct mean disagreement of the models over players
   * @param penaltyPct what the rank follows from, in per cent of the base
   */
  public record FittedPair(
      int rank,
      String pair,
      String title,
      String technique,
      String pattern,
      double omniPart,
      List<MicrophonesUsed> microphones,
      Map<String, Double> parameters,
      double distanceM,
      PairPosition place,
      double fillPct,
      GeometryAnswer.RecordingAngleLine recordingAngle,
      double worstMonoLossDb,
      double spreadPct,
      OptionalDouble directToReverberantDb,
      List<FittedPlayer> players,
      List<GivesUp> givesUp,
      List<Validity> validity,
      double penaltyPct) {}

  /** Models that make the layout together, one a body. */
  public record MicrophonesUsed(List<String> microphones, boolean matched) {}

  /**
   * How one player comes across.
   *
   * @param proportionalPct where a proportional picture would put the player
   */
  public record FittedPlayer(
      String id,
      double azimuthDeg,
      double distanceM,
      double levelDifferenceDb,
      double timeDifferenceMs,
      boolean oppositePolarity,
      List<PlayerImage> images,
      double spreadPct,
      double proportionalPct,
      double monoLossDb,
      String worstOctave,
      OptionalDouble directToReverberantDb) {}

  /** Where a model puts a player. */
  public record PlayerImage(String model, double positionPct, boolean beyondStudy) {}

  /**
   * Why a layout can't do it.
   *
   * @param pair id of the layout
   * @param figures what failed, by names with the unit last; which there are depends on the code
   * @param nearest measures with which it came nearest to the wish
   */
  public record UnfitPair(
      String pair,
      String code,
      String detail,
      Optional<String> pattern,
      Optional<String> player,
      Map<String, Double> figures,
      Map<String, Double> nearest) {}
}
