package org.standoff.answers.headroom;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.advice.Caution;
import org.standoff.advice.Ranked;
import org.standoff.answers.Basis;
import org.standoff.answers.Range;
import org.standoff.answers.settings.SettingsAnswer;
import org.standoff.chain.Stage;

/**
 * The answer to a {@link HeadroomQuestion}.
 *
 * @param microphone id of the microphone
 * @param preamp id of the preamp
 * @param peakDbSpl peak at the capsule
 * @param settings the settings, gain included
 * @param verdict how they serve at the guarded percentile
 * @param headroomDb least headroom at the guarded percentile
 * @param firstToClip the stage that has it
 * @param clipProbability that the highest peak clips something
 * @param stages stage by stage
 * @param terms what the levels are made of
 * @param recommendedGainDb the gain that the style would set
 * @param noise what the noise is made of
 * @param tone what being near and the filter do; absent where only a level was told
 * @param cautions that belong to it
 * @param basis what the answer rests on
 */
public record HeadroomAnswer(
    String microphone,
    String preamp,
    Range peakDbSpl,
    SettingsAnswer.Chosen settings,
    Ranked.Verdict verdict,
    double headroomDb,
    Stage firstToClip,
    double clipProbability,
    List<SettingsAnswer.StageLine> stages,
    Terms terms,
    double recommendedGainDb,
    Noise noise,
    Optional<SettingsAnswer.Tone> tone,
    List<Caution> cautions,
    Basis basis) {

  /**
   * Every intermediate term of the typical peak, so that a wrong total names its term. All dBu are
   * those of the sine that has the peak.
   */
  public record Terms(
      double maximumSplDb,
      double sineDbSpl,
      double patternRiseDb,
      double microphoneOutputDbu,
      double loadingDb,
      double preampInputDbu,
      double preampInputLimitDbu,
      double preampOutputDbu,
      double preampOutputLimitDbu,
      double fullScaleDbu,
      double peakDbfs) {}

  /** The noise, with the ratio only where a long-term level is known. */
  public record Noise(
      OptionalDouble roomDba,
      double microphoneDba,
      double preampDba,
      double totalDba,
      String dominant,
      OptionalDouble signalToNoiseDb) {}
}
