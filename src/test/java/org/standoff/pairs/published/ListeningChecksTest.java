package org.standoff.pairs.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.fixture.ShippedPairs.model;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.Pairs;
import org.standoff.pairs.Crossing;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.RecordingAngle;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.LinearFactors;
import org.standoff.pairs.listening.ListeningModel;
import org.standoff.pairs.listening.LoudspeakerBase;

/**
 * Topic L with listening models, each row with the model that it names; the models are the shipped
 * files, so a row also proves the file. Sources stand in each row.
 */
class ListeningChecksTest {
  private static final ListeningModel TWO_REGION = model("two-region");
  private static final ListeningModel LINEAR = model("linear-factors");
  private static final ListeningModel STRAIGHT = model("straight-trade");
  private static final ListeningModel POINTS = model("simonsen-points");
  private static final ListeningModel LIMIT = model("limit-polyline");

  /** Air in which sound runs at the worked figures' 343.8 m/s. */
  private static final Air WORKED = Air.at(21);

  @TestFactory
  Stream<DynamicTest> images() {
    return CheckTable.ofTopics("L-localisation")
        .row("L16", () -> levelForDeg(POINTS, 30))
        .row("L17", () -> timeForDeg(POINTS, 30))
        .row("L18", () -> levelCompleting(LIMIT, 0.5))
        .row("L19", () -> levelForDeg(POINTS, 10))
        .row("L20", () -> levelForDeg(POINTS, 20))
        .row("L21", () -> timeForDeg(POINTS, 20))
        .row("L22", () -> imagePct(LINEAR, 4, 0.2))
        .row("L23", () -> ((LinearFactors) LINEAR).levelPctPerDb())
        .row("L24", () -> ((LinearFactors) LINEAR).timePctPerMs() / 10)
        .row("L25", () -> imagePct(TWO_REGION, 12, 0))
        .row("L26", () -> imagePct(TWO_REGION, 5, 0.3))
        .row("L27", () -> LoudspeakerBase.STANDARD.imageDeg(50))
        .row("L67", () -> imagePct(STRAIGHT, 4, 0.2))
        .row("L68", () -> endOfLinePct(CARDIOID, 0.40, 120))
        .row("L69", () -> endOfLinePct(CARDIOID, 0.20, 130))
        .row("L70", () -> endOfLinePct(FIGURE_8, 0, 90))
        .row("L75", () -> LoudspeakerBase.STANDARD.imageDeg(imagePct(POINTS, 4, 0)))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> recordingAngles() {
    return CheckTable.ofTopics("L-SRA")
        .row("L28", () -> totalDeg(LIMIT, CARDIOID, 0.17, 110))
        .row("L29", () -> totalDeg(LIMIT, CARDIOID, 0.30, 90))
        .row("L30", () -> totalDeg(LIMIT, CARDIOID, 0.20, 90))
        .row("L31", () -> totalDeg(LIMIT, CARDIOID, 0, 90))
        .row("L32", () -> totalDeg(LIMIT, FIGURE_8, 0, 90))
        .row("L33", () -> totalDeg(LIMIT, OMNI, 0.50, 0))
        .row("L34", () -> totalDeg(LIMIT, CARDIOID, 0.17, 110))
        .row("L35", () -> totalDeg(LIMIT, CARDIOID, 0.30, 90))
        .row("L36", () -> totalDeg(LIMIT, FIGURE_8, 0, 90))
        .row("L37", () -> totalDeg(LIMIT, OMNI, 0.60, 0))
        .row("L38", () -> totalDeg(LIMIT, CARDIOID, 0, 120))
        .row("L39", () -> totalDeg(TWO_REGION, CARDIOID, 0.17, 110))
        .row("L40", () -> totalDeg(TWO_REGION, CARDIOID, 0.30, 90))
        .row("L41", () -> totalDeg(TWO_REGION, CARDIOID, 0.17, 140))
        .row("L42", () -> totalDeg(TWO_REGION, CARDIOID, 0.17, 110))
        .row("L43", () -> totalDegAtLevel(CARDIOID, 90, 15))
        .row("L44", () -> totalDegAtLevel(FIGURE_8, 90, 18))
        .row("L45", () -> totalDeg(LIMIT, OMNI, 0.60, 0))
        .row("L71", () -> nearTotalDeg(CARDIOID, 0.40, 90))
        .row("L72", () -> nearTotalDeg(OMNI, 0.40, 0))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> angularDistortion() {
    return CheckTable.ofTopics("L-angular-distortion")
        .row("L46", () -> LoudspeakerBase.STANDARD.angularDistortionDeg(18, 24, 96))
        .tests();
  }

  private static double imagePct(ListeningModel model, double levelDb, double timeMs) {
    return model.imagePct(levelDb, timeMs).orElseThrow();
  }

  private static double levelForDeg(ListeningModel model, double deg) {
    return Crossing.between(
        db -> LoudspeakerBase.STANDARD.imageDeg(imagePct(model, db, 0)) >= deg - 1e-9, 0, 40);
  }

  private static double timeForDeg(ListeningModel model, double deg) {
    return Crossing.between(
        ms -> LoudspeakerBase.STANDARD.imageDeg(imagePct(model, 0, ms)) >= deg - 1e-9, 0, 4);
  }

  private static double levelCompleting(ListeningModel model, double timeMs) {
    return Crossing.between(db -> model.sidewaysPct(db, timeMs) >= ListeningModel.SIDE_PCT, 0, 40);
  }

  /** End of a line 3 m wide, 2.5 m in front of the pair; rows take its right end. */
  private static double endOfLinePct(PatternName pattern, double spacingM, double angleDeg) {
    PairHearing hearing = PairHearing.of(Pairs.of(pattern, spacingM, angleDeg), WORKED);
    StereoDifferences heard = hearing.differences(new SoundOrigin.InRoom(new Point3(1.5, 2.5, 0)));
    return -imagePct(STRAIGHT, heard.levelDb(), heard.timeMs());
  }

  private static double totalDeg(
      ListeningModel model, PatternName pattern, double spacingM, double angleDeg) {
    return RecordingAngle.far(Pairs.heard(pattern, spacingM, angleDeg), model)
        .totalDeg()
        .orElseThrow();
  }

  private static double nearTotalDeg(PatternName pattern, double spacingM, double angleDeg) {
    PairHearing hearing = PairHearing.of(Pairs.of(pattern, spacingM, angleDeg), WORKED);
    return RecordingAngle.at(hearing, STRAIGHT, 2.5).totalDeg().orElseThrow();
  }

  private static double totalDegAtLevel(PatternName pattern, double angleDeg, double levelDb) {
    RightwardRow row = RightwardRow.of(pattern, 0, angleDeg);
    return 2 * Crossing.between(deg -> row.levelDb(deg) >= levelDb, 0, 89);
  }
}
