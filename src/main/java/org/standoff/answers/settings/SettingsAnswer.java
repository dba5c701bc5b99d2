package org.standoff.answers.settings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Purpose;
import org.standoff.advice.Caution;
import org.standoff.advice.Change;
import org.standoff.advice.Cure;
import org.standoff.advice.Limits;
import org.standoff.advice.Ranked;
import org.standoff.advice.Reason;
import org.standoff.advice.Refusal;
import org.standoff.advice.Weighed;
import org.standoff.answers.Basis;
import org.standoff.answers.Range;
import org.standoff.chain.FilterPlace;
import org.standoff.chain.GainVerdict;
import org.standoff.chain.PadPosition;
import org.standoff.chain.Stage;

/**
 * The answer to a {@link SettingsQuestion}.
 *
 * @param asked the resolved question, defaults included
 * @param atCapsule what reaches the capsules, microphone by microphone of a pair
 * @param recommendations best first
 * @param consideredCount how many microphones were looked at
 * @param whyNot those that fail, with the failing figure
 * @param whyNotCount how many fail; more than are listed where there are many
 * @param compared the given settings, side by side, in the order of the question
 * @param oneInput what one gain does to the doubled sources
 * @param cautions about the place
 * @param customForComparison what custom does there; it decided nothing
 * @param basis what the answer rests on
 */
public record SettingsAnswer(
    Asked asked,
    List<AtCapsule> atCapsule,
    List<Recommendation> recommendations,
    int consideredCount,
    List<Refusal> whyNot,
    int whyNotCount,
    List<Compared> compared,
    Optional<DoublesOnOneInput> oneInput,
    List<Caution> cautions,
    Optional<String> customForComparison,
    Basis basis) {

  /** The resolved question. */
  public record Asked(
      String source,
      String placement,
      Purpose purpose,
      double distanceM,
      double wantedFromHz,
      String preamp,
      double fullScaleDbu,
      String style,
      double guardedPercentile,
      double wantedHeadroomDb,
      double targetPeakDbfs,
      Optional<String> room,
      OptionalDouble backgroundNoiseDba,
      OptionalDouble neighbourLevelDbSpl) {}

  /** What reaches a capsule from the source, direct. */
  public record AtCapsule(double distanceM, Range peakDbSpl, double levelDbSpl, double levelDba) {}

  /** One microphone with its settings. */
  public record Recommendation(
      int rank,
      String microphone,
      String title,
      Ranked.Verdict verdict,
      double score,
      Chosen settings,
      double headroomDb,
      double clipProbability,
      Stage firstToClip,
      List<StageLine> stages,
      NoiseLine noise,
      Tone tone,
      Hears hears,
      Limits limits,
      List<Reason> reasons,
      List<Weighed> weighed,
      List<Change> changes,
      List<Cure> cures,
      List<Caution> cautions,
      OptionalDouble counterMassKg) {}

  /** Settings as they are switched. */
  public record Chosen(
      String output,
      String pattern,
      double padDb,
      Optional<PadPosition> padPosition,
      double highPassHz,
      OptionalDouble highPassDbPerOctave,
      Optional<FilterPlace> highPassPlace,
      double inLinePadDb,
      double preampPadDb,
      String polarity,
      double gainDb,
      double wantedGainDb,
      GainVerdict gainVerdict,
      double peakDbfs) {}

  /** One stage: where the peak stands there and what is left. */
  public record StageLine(
      Stage stage, double headroomDb, double guardedHeadroomDb, double clipProbability) {}

  /** What the noise is made of, in dB(A) as sound level. */
  public record NoiseLine(
      OptionalDouble roomDba,
      double microphoneDba,
      double preampDba,
      double totalDba,
      String dominant,
      double signalToNoiseDb) {}

  /** What being near and the filter do to the tone. */
  public record Tone(
      Map<String, Double> proximityDb,
      Map<String, Double> filterDb,
      double proximityAtLowestDb,
      double filterLossAtLowestDb,
      double patternRiseDb,
      boolean patternRiseCounted) {}

  /** What else the microphone hears. */
  public record Hears(
      double isolationDb,
      OptionalDouble unwantedDbSpl,
      OptionalDouble unwantedReWantedDb,
      OptionalDouble directToReverberantDb,
      List<NeighbourLine> neighbours) {}

  /** One neighbour in the microphone. */
  public record NeighbourLine(
      String source, double directDbSpl, OptionalDouble lateDbSpl, double reWantedDb) {}

  /** Given settings, assessed. */
  public record Compared(
      String microphone,
      Ranked.Verdict verdict,
      Chosen settings,
      double headroomDb,
      double clipProbability,
      Stage firstToClip,
      List<StageLine> stages,
      NoiseLine noise,
      Tone tone,
      Hears hears) {}
}
