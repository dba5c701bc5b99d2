package org.standoff.floor.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.Floors;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.Comb;
import org.standoff.floor.MicrophoneBleed;

/** Topic J: bleed in free field and the comb of a copy; sources stand in each row. */
class BleedChecksTest {
  private static final Point3 HERE = new Point3(5, 4, 2);

  @TestFactory
  Stream<DynamicTest> bleed() {
    return CheckTable.ofTopics("J-bleed")
        .row("J01", () -> -threeToOne().offenders().get(0).belowWantedDb())
        .row("J02", () -> atThreeToOne().peakDb())
        .row("J03", () -> atThreeToOne().dipDb())
        .row("J04", () -> atThreeToOne().rippleDb())
        .row("J05", () -> new Comb(10, 1, false).rippleDb())
        .row("J06", () -> new Comb(20, 1, false).rippleDb())
        .row("J07", () -> threeToOne().offenders().get(0).ratioPromisesDb())
        .row("J08", () -> hatAgainstSnare(CARDIOID, 120))
        .row("J09", () -> hatAgainstSnare(HYPERCARDIOID, 100))
        .row("J10", () -> Level.energySum(-12, -15, -20, -25))
        .row("J11", () -> new Comb(0, 1000 * 0.343 / 343, false).firstNotchHz())
        .row("J12", () -> new Comb(0, 1, false).firstNotchHz())
        .row("J13", () -> new Comb(0, 1, false).notchSpacingHz())
        .row("J14", () -> new Comb(6, 0.5, false).toneDb(1000))
        .row("J15", () -> Comb.differenceOfRippleDb(1))
        .tests();
  }

  private static Comb atThreeToOne() {
    return new Comb(Level.ofAmplitudeRatio(3), 1, false);
  }

  private static MicrophoneBleed threeToOne() {
    return bleed(
        OMNI, 100, HERE.moved(Direction.FRONT, 0.3), 100, HERE.moved(new Direction(90, 0), 0.9));
  }

  private static double hatAgainstSnare(PatternName pattern, double snareAngleDeg) {
    return -bleed(
            pattern,
            105,
            HERE.moved(Direction.FRONT, 0.1),
            120,
            HERE.moved(new Direction(snareAngleDeg, 0), 0.5))
        .isolationDb()
        .orElseThrow();
  }

  /** Levels at 1 m, in free field. */
  private static MicrophoneBleed bleed(
      PatternName pattern, double wantedDb, Point3 wanted, double unwantedDb, Point3 unwanted) {
    double powerOverLevelDb = Level.ofPowerRatio(4 * Math.PI);
    return BleedMatrix.of(
            Floors.plan(
                Floors.openAir(),
                List.of(
                    Floors.source("wanted", wantedDb + powerOverLevelDb, wanted),
                    Floors.source("unwanted", unwantedDb + powerOverLevelDb, unwanted)),
                List.of(
                    Floors.uncapped(Floors.microphone("mic", pattern, HERE, wanted, "wanted")))),
            0)
        .bleed(0);
  }
}
