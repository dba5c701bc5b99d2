package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.HighPass;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.UncertainDb;
import org.standoff.advice.Arrival;
import org.standoff.advice.Assessment;
import org.standoff.advice.Assessor;
import org.standoff.advice.ClipRisk;
import org.standoff.advice.Heard;
import org.standoff.advice.Question;
import org.standoff.chain.Filter;
import org.standoff.chain.Headrooms;
import org.standoff.chain.NoiseBudget;
import org.standoff.chain.Pad;
import org.standoff.chain.Reading;
import org.standoff.chain.Settings;
import org.standoff.chain.Stage;

/** Represents one assessed candidate: the same for recommended and for given settings. */
public final class AssessmentView {
  private final Assessor assessor;
  private final Assessment assessment;

  public AssessmentView(Assessor assessor, Assessment assessment) {
    this.assessor = assessor;
    this.assessment = assessment;
  }

  public SettingsAnswer.Chosen settings() {
    Settings settings = assessment.settings();
    Reading loudest = assessment.levels().loudest();
    Optional<HighPass> highPass = settings.filter().map(Filter::highPass);
    boolean padIn = !settings.pad().equals(Pad.OUT);
    return new SettingsAnswer.Chosen(
        settings.outputId(),
        settings.pattern().name().id(),
        settings.pad().padDb(),
        padIn ? Optional.of(settings.pad().position()) : Optional.empty(),
        highPass.map(HighPass::cornerHz).orElse(0.0),
        highPass.map(h -> OptionalDouble.of(h.slopeDbPerOctave())).orElse(OptionalDouble.empty()),
        settings.filter().map(Filter::place),
        settings.inLinePadDb(),
        settings.preampPadDb(),
        polarity(assessor.question()),
        loudest.gain().setDb(),
        loudest.gain().wantedDb(),
        loudest.gain().verdict(),
        loudest.peakDbfs());
  }

  public double headroomDb() {
    return assessment.levels().guarded().leastDb();
  }

  public Stage firstToClip() {
    return assessment.levels().guarded().first();
  }

  public double clipProbability() {
    return ClipRisk.probability(widestPeak(), assessment.levels().typical(), sheetSpreadDb());
  }

  public List<SettingsAnswer.StageLine> stages() {
    Headrooms typical = assessment.levels().typical();
    Headrooms guarded = assessment.levels().guarded();
    UncertainDb player = new UncertainDb(0, widestPeak().spreadDb());
    UncertainDb electronics = player.with(new UncertainDb(0, sheetSpreadDb()));
    List<SettingsAnswer.StageLine> lines = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      UncertainDb excess = stage == Stage.ELECTRONICS ? electronics : player;
      lines.add(
          new SettingsAnswer.StageLine(
              stage,
              typical.of(stage),
              guarded.of(stage),
              excess.probabilityAbove(typical.of(stage))));
    }
    return lines;
  }

  public SettingsAnswer.NoiseLine noise() {
    NoiseBudget noise = assessment.noise();
    return new SettingsAnswer.NoiseLine(
        noise.roomDba(),
        noise.microphoneDba(),
        noise.preampDba(),
        noise.totalDba(),
        noise.dominant(),
        assessment.signalToNoiseDb());
  }

  public SettingsAnswer.Tone tone() {
    Map<String, Double> proximity = new LinkedHashMap<>();
    Map<String, Double> filter = new LinkedHashMap<>();
    for (Octave octave : Octave.all()) {
      proximity.put(octave.label(), assessment.view().proximityDb().get(octave));
      assessment
          .settings()
          .filter()
          .ifPresent(f -> filter.put(octave.label(), f.highPass().gainDb(octave.midHz())));
    }
    return new SettingsAnswer.Tone(
        proximity,
        filter,
        assessment.view().riseAtLowestDb(),
        assessment.filterLossAtLowestDb(),
        assessment.levels().loudest().riseAtElectronicsDb(),
        assessment.view().rises().get(0).counted());
  }

  public SettingsAnswer.Hears hears() {
    Heard heard = Heard.of(assessor, assessment);
    return new SettingsAnswer.Hears(
        assessment.view().isolationDb(),
        heard.unwantedDbSpl(),
        heard.unwantedReWantedDb(),
        heard.directToReverberantDb(),
        heard.neighbours().stream()
            .map(
                n ->
                    new SettingsAnswer.NeighbourLine(
                        n.title(), n.directDbSpl(), n.lateDbSpl(), n.reWantedDb()))
            .toList());
  }

  private static String polarity(Question question) {
    return question.placement().side() == SourceSide.OPPOSITE ? "inverted" : "normal";
  }

  private UncertainDb widestPeak() {
    UncertainDb widest = assessor.arrivals().get(0).peak();
    for (Arrival arrival : assessor.arrivals()) {
      if (arrival.peak().spreadDb() > widest.spreadDb()) {
        widest = arrival.peak();
      }
    }
    return widest;
  }

  private double sheetSpreadDb() {
    return assessment.microphone().maximumSpl().spreadDb();
  }
}
