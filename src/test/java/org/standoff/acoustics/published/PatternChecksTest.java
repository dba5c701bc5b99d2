package org.standoff.acoustics.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.SUPERCARDIOID;
import static org.standoff.acoustics.PatternName.WIDE_CARDIOID;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.PatternName;
import org.standoff.fixture.CheckTable;

/**
 * Topic D: first-order patterns against Eargle, The Microphone Book, Woram, Bartlett, Heller 2011
 * and the formulae themselves; sources stand in each row.
 */
class PatternChecksTest {
  @TestFactory
  Stream<DynamicTest> firstOrderPatterns() {
    CheckTable table = CheckTable.ofTopics("D-patterns");
    diffuse(table, WIDE_CARDIOID, "D01", "D02", "D03");
    diffuse(table, CARDIOID, "D04", "D05", "D06");
    diffuse(table, SUPERCARDIOID, "D07", "D08", "D09");
    diffuse(table, HYPERCARDIOID, "D10", "D11", "D12");
    diffuse(table, FIGURE_8, "D13", "D14", "D15");
    angles(table, CARDIOID, "D16", "D17", "D18");
    angles(table, SUPERCARDIOID, "D20", "D21", "D22");
    angles(table, HYPERCARDIOID, "D25", "D26", "D27");
    angles(table, FIGURE_8, "D30", "D31", "D32");
    return table
        .row("D19", () -> CARDIOID.ideal().levelDb(90))
        .row("D23", () -> SUPERCARDIOID.ideal().levelDb(90))
        .row("D24", () -> SUPERCARDIOID.ideal().levelDb(180))
        .row("D28", () -> HYPERCARDIOID.ideal().levelDb(90))
        .row("D29", () -> HYPERCARDIOID.ideal().levelDb(180))
        .row("D33", () -> FIGURE_8.ideal().levelDb(180))
        .row("D34", () -> CARDIOID.ideal().directivityFactor())
        .row("D35", () -> HYPERCARDIOID.ideal().directivityFactor())
        .row("D36", () -> FIGURE_8.ideal().directivityIndexDb())
        .row("D37", () -> SUPERCARDIOID.ideal().omniPart())
        .row("D38", () -> SUPERCARDIOID.ideal().frontShare())
        .row("D39", () -> SUPERCARDIOID.ideal().unidirectionalIndexDb())
        .row("D40", () -> CARDIOID.ideal().unidirectionalIndexDb())
        .row("D41", () -> WIDE_CARDIOID.ideal().levelDb(180))
        .tests();
  }

  private static void diffuse(
      CheckTable table, PatternName name, String efficiency, String index, String distance) {
    table
        .row(efficiency, () -> name.ideal().randomEnergyEfficiency())
        .row(index, () -> name.ideal().directivityIndexDb())
        .row(distance, () -> name.ideal().distanceFactor());
  }

  private static void angles(
      CheckTable table, PatternName name, String threeDb, String sixDb, String nullAngle) {
    table
        .row(threeDb, () -> name.ideal().totalPickupAngleDeg(3).orElseThrow())
        .row(sixDb, () -> name.ideal().totalPickupAngleDeg(6).orElseThrow())
        .row(nullAngle, () -> name.ideal().nullAngleDeg().orElseThrow());
  }
}
