package org.standoff.floor.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.acoustics.PatternName.SUPERCARDIOID;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.Room;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.Floors;
import org.standoff.floor.BleedCell;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.ExposureRule;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorSource;
import org.standoff.floor.Lining;
import org.standoff.floor.RoomReport;

/**
 * The check figures of the demo session, derived by hand from the stated laws for omnidirectional
 * sources, the point law and only the direct sound explicit (n = 0): A = 70 m², S = 474 m². Told to
 * 0.1 dB, so held to half of that where nothing else is said.
 */
class BoathouseFloorTest {
  private static final Offset<Double> TOLD_DB = within(0.055);
  private static final Offset<Double> TOLD_M = within(0.0051);
  private static final Point3 DRUMS = new Point3(2.5, 4.5, 0.8);
  private static final Point3 VIOLIN = new Point3(8.6, 3.9, 1.5);
  private static final Point3 TRUMPET = new Point3(11.6, 5.2, 1.5);
  private static final Point3 ALTO = new Point3(11.6, 6.7, 1.1);
  private static final Point3 TROMBONE = new Point3(11.6, 8.2, 1.4);

  /** Areas in m² and absorption at 125 Hz to 4 kHz, and a row of plain area. */
  private static final double[][] SURFACES = {
    {126, .15, .11, .10, .07, .06, .07},
    {148, .24, .19, .14, .08, .13, .10},
    {146, .03, .03, .03, .04, .05, .07},
    {24, .18, .06, .04, .03, .02, .02},
    {30, .14, .35, .55, .72, .70, .65},
    {1, 3, 8, 15, 22, 26, 38}
  };

  private static final Octaves DRAPE = Octaves.of(.14, .14, .14, .35, .55, .72, .70, .65, .65, .65);

  @TestFactory
  Stream<DynamicTest> workedFloor() {
    String elsewhere = "checked where levels or arrivals are computed";
    CheckTable table =
        CheckTable.ofTopics("W-worked")
            .row("W13", () -> Floors.hall(70).criticalDistanceM(Octave.HZ_1K, 1))
            .row("W14", () -> drums(108, OMNI).late().overallDb())
            .row("W15", () -> clip(108).cell(0, 0).direct().overallDb())
            .row("W16", () -> directOverDrumsRoom(clip(108)));
    for (int row = 1; row <= 17; row++) {
      if (row < 13 || row > 16) {
        table.notHere(String.format("W%02d", row), elsewhere);
      }
    }
    return table.tests();
  }

  @Test
  void theRoomDecaysAsItsSurfacesSay() {
    double[] told = {1.5, 1.6, 1.5, 1.5, 1.3, 1.15};
    RoomReport report = RoomReport.of(boathouse(), List.of());
    for (int band = 0; band < told.length; band++) {
      assertThat(report.decays().get(Octave.HZ_125.ordinal() + band).sabineS())
          .as("%s", Octave.all().get(Octave.HZ_125.ordinal() + band))
          .isCloseTo(told[band], within(0.05));
    }
    assertThat(boathouse().midAbsorptionAreaM2()).isCloseTo(70, within(0.5));
    assertThat(report.schroederHz()).isCloseTo(96, within(0.5));
  }

  @Test
  void sixtySquareMetresOfDrapeBuyTwoDecibels() {
    RoomReport.LiningEffect drape =
        RoomReport.of(boathouse(), List.of(new Lining("drape", 60, DRAPE))).linings().get(0);
    assertThat(drape.lateChangeDb()).isCloseTo(-2.3, TOLD_DB);
    assertThat(drape.decayS()).isCloseTo(0.97, within(0.0055));
  }

  @Test
  void theDrumsAreOverTheViolinInItsOwnMicrophoneAndThroughTheRoom() {
    BleedMatrix spot = violinAndDrums(spotMicrophone(CARDIOID, 0.6), 0.6, 108);
    assertThat(spot.cell(0, 0).direct().overallDb()).isCloseTo(82.4, TOLD_DB);
    assertThat(spot.cell(0, 1).late().overallDb()).isCloseTo(90.1, TOLD_DB);
    assertThat(directOverDrumsRoom(spot)).isCloseTo(-7.7, TOLD_DB);
    assertThat(spot.bleed(0).roomDominates()).isTrue();
  }

  @Test
  void aClipMicrophoneAndBrushesTogetherCureIt() {
    assertThat(clip(108).cell(0, 1).late().overallDb()).isCloseTo(89.2, TOLD_DB);
    assertThat(directOverDrumsRoom(clip(94))).isCloseTo(17.3, TOLD_DB);
  }

  @Test
  void levelsAndPathsToTheViolinMicrophone() {
    Point3 mic = new Point3(8.4, 4.2, 2.0);
    BleedMatrix matrix =
        matrix(
            List.of(Floors.source("trumpet", 101, TRUMPET), Floors.source("drums", 108, DRUMS)),
            Floors.microphone("violin", OMNI, mic, VIOLIN));
    assertThat(matrix.cell(0, 0).pathM()).isCloseTo(3.39, TOLD_M);
    assertThat(matrix.cell(0, 0).direct().overallDb()).isCloseTo(79.4, TOLD_DB);
    assertThat(matrix.cell(0, 0).late().overallDb()).isCloseTo(87.9, TOLD_DB);
    assertThat(matrix.cell(0, 1).pathM()).isCloseTo(6.03, TOLD_M);
    assertThat(matrix.cell(0, 1).direct().overallDb()).isCloseTo(81.4, TOLD_DB);
    assertThat(matrix.cell(0, 1).late().overallDb()).isCloseTo(94.9, TOLD_DB);
  }

  @Test
  void pathsToTheHornPair() {
    BleedMatrix matrix =
        matrix(
            List.of(
                Floors.source("trumpet", 101, TRUMPET),
                Floors.source("alto", 97, ALTO),
                Floors.source("trombone", 101, TROMBONE)),
            Floors.microphone("horns", OMNI, new Point3(9.1, 6.7, 2.0), ALTO));
    assertThat(matrix.cell(0, 0).pathM()).isCloseTo(2.96, TOLD_M);
    assertThat(matrix.cell(0, 1).pathM()).isCloseTo(2.66, TOLD_M);
    assertThat(matrix.cell(0, 2).pathM()).isCloseTo(2.98, TOLD_M);
  }

  @Test
  void theWholeEnsembleFillsTheRoom() {
    double[] powers = {108, 101, 92, 95, 96, 85, 89, 90, 101, 97, 101};
    double powerDb = Level.energySum(powers);
    assertThat(powerDb).isCloseTo(110.7, TOLD_DB);
    double roomDb = drums(powerDb, OMNI).late().overallDb();
    assertThat(roomDb).isCloseTo(97.5, TOLD_DB);
    assertThat(60 * ExposureRule.NIOSH_REL.allowedHours(roomDb)).isCloseTo(26, within(0.6));
  }

  private static BleedCell drums(double powerDb, PatternName pattern) {
    return matrix(
            List.of(Floors.source("drums", powerDb, DRUMS)),
            Floors.microphone("far", pattern, VIOLIN, DRUMS))
        .cell(0, 0);
  }

  /** A clip 0.05 m from the body of the violin, whose radius is 0.14 m. */
  private static BleedMatrix clip(double drumsDb) {
    FloorMicrophone clip = spotMicrophone(SUPERCARDIOID, 0.05);
    FloorSource violin =
        Floors.radiating(Floors.source("violin", 89, VIOLIN), new Radiator.Sphere(0.14))
            .turned(new Direction(0, 90));
    return matrix(List.of(violin, Floors.source("drums", drumsDb, DRUMS)), clip);
  }

  private static BleedMatrix violinAndDrums(
      FloorMicrophone microphone, double distanceM, double drumsDb) {
    assertThat(microphone.position().distanceToM(VIOLIN)).isCloseTo(distanceM, within(1e-9));
    return matrix(
        List.of(Floors.source("violin", 89, VIOLIN), Floors.source("drums", drumsDb, DRUMS)),
        microphone);
  }

  private static FloorMicrophone spotMicrophone(PatternName pattern, double aboveM) {
    Point3 above = VIOLIN.moved(new Direction(0, 90), aboveM);
    return Floors.microphone("violin-spot", pattern, above, VIOLIN, "violin");
  }

  private static double directOverDrumsRoom(BleedMatrix matrix) {
    return matrix.cell(0, 0).direct().overallDb() - matrix.cell(0, 1).late().overallDb();
  }

  private static BleedMatrix matrix(List<FloorSource> sources, FloorMicrophone microphone) {
    return BleedMatrix.of(Floors.plan(Floors.hall(70), sources, List.of(microphone)), 0);
  }

  private static Room boathouse() {
    double[] areas = new double[Octave.COUNT];
    for (int i = 0; i < areas.length; i++) {
      int band = Math.min(Math.max(i - Octave.HZ_125.ordinal(), 0), 5) + 1;
      for (double[] surface : SURFACES) {
        areas[i] += surface[0] * surface[band];
      }
    }
    return new Room(655, 474, Octaves.of(areas), Floors.HALL, Air.at(20), 28);
  }
}
