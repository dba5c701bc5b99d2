package org.standoff.acoustics.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.acoustics.PatternName.SUPERCARDIOID;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Proximity;
import org.standoff.acoustics.Radiator;
import org.standoff.fixture.CheckTable;

/** Topic E: rise near a point source and near a piston, derived from Euler's equation. */
class ProximityChecksTest {
  /** The rows' own speed of sound. */
  private static final double C = 343.2;

  @TestFactory
  Stream<DynamicTest> proximity() {
    return CheckTable.ofTopics("E-proximity")
        .row("E01", () -> rise(FIGURE_8, 100, 0.05, 0))
        .row("E02", () -> rise(CARDIOID, 100, 0.05, 0))
        .row("E03", () -> rise(FIGURE_8, 100, 0.3, 0))
        .row("E04", () -> rise(CARDIOID, 100, 0.3, 0))
        .row("E05", () -> rise(CARDIOID, 50, 0.1, 0))
        .row("E06", () -> rise(SUPERCARDIOID, 100, 0.1, 0))
        .row("E07", () -> rise(HYPERCARDIOID, 80, 0.2, 0))
        .row("E08", () -> rise(CARDIOID, 100, 0.1, 60))
        .row("E09", () -> rise(OMNI, 60, 0.03, 0))
        .row("E10", () -> rise(CARDIOID, 100, 0.05, 90))
        .row("E11", () -> frequencyOfThreeDb(FIGURE_8))
        .row("E12", () -> frequencyOfThreeDb(CARDIOID))
        .row("E13", () -> new Radiator.Piston(0.28).proximityDb(CARDIOID.ideal(), 1, 0.05, 60, C))
        .tests();
  }

  private static double rise(PatternName name, double hz, double distanceM, double angleDeg) {
    double cosTheta = Math.cos(Math.toRadians(angleDeg));
    return new Radiator.Point(0).proximityDb(name.ideal(), cosTheta, distanceM, hz, C);
  }

  private static double frequencyOfThreeDb(PatternName name) {
    return Proximity.frequencyOfRiseHz(name.ideal(), 0.5, Level.ofPowerRatio(2), C);
  }
}
