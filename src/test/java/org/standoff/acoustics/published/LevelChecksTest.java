package org.standoff.acoustics.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.RmsSpl;
import org.standoff.fixture.CheckTable;

/** Topic A: definitions of ISO 1683 and ISO 80000-8; sources stand in each row. */
class LevelChecksTest {
  private static final String VOLTAGE = "voltages are checked beside the microphone chain";

  @TestFactory
  Stream<DynamicTest> levels() {
    return CheckTable.ofTopics("A-levels")
        .row("A01", () -> RmsSpl.ofPascals(1).db())
        .row("A02", () -> new RmsSpl(114).pascals())
        .row("A03", () -> 1e6 * new RmsSpl(0).pascals())
        .notHere("A04", VOLTAGE)
        .notHere("A05", VOLTAGE)
        .notHere("A06", VOLTAGE)
        .notHere("A07", VOLTAGE)
        .notHere("A08", VOLTAGE)
        .notHere("A09", VOLTAGE)
        .notHere("A10", VOLTAGE)
        .row("A11", () -> Level.energySum(90, 90))
        .row("A12", () -> Level.energySum(94, 91, 88))
        .row("A13", () -> Level.inPhaseSum(90, 90))
        .row("A14", () -> Level.phasorSum(80, 80, 120))
        .row("A15", () -> new RmsSpl(94).sinePeak().db())
        .row("A16", () -> Level.inPhaseSum(0, 0))
        .tests();
  }
}
