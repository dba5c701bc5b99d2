package org.standoff.acoustics.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.HighPass;
import org.standoff.fixture.CheckTable;

/** Topic F: Butterworth's response at notes of the instruments, derived. */
class HighPassChecksTest {
  @TestFactory
  Stream<DynamicTest> highPassFilters() {
    return CheckTable.ofTopics("F-highpass")
        .row("F01", () -> gainDb(40, 1, 40))
        .row("F02", () -> gainDb(80, 2, 80))
        .row("F03", () -> gainDb(40, 2, 41.2))
        .row("F04", () -> gainDb(80, 2, 41.2))
        .row("F05", () -> gainDb(40, 2, 30.87))
        .row("F06", () -> gainDb(80, 3, 30.87))
        .row("F07", () -> gainDb(80, 2, 50))
        .row("F08", () -> gainDb(40, 1, 50))
        .row("F09", () -> gainDb(80, 2, 65.41))
        .row("F10", () -> gainDb(80, 2, 82.41))
        .row("F11", () -> gainDb(40, 3, 27.5))
        .row("F12", () -> gainDb(150, 2, 82.41))
        .row("F13", () -> gainDb(100, 1, 82.41))
        .row("F14", () -> gainDb(80, 3, 20))
        .row("F15", () -> gainDb(75, 2, 196))
        .tests();
  }

  private static double gainDb(double cornerHz, int order, double hz) {
    return new HighPass(cornerHz, order).gainDb(hz);
  }
}
