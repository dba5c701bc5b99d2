package org.standoff.acoustics.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.fixture.CheckTable;

/** Topic M, sources: the directivity model, derived. */
class SourceChecksTest {
  private static final String SOURCE_DATUM = "a figure of a source's data, not of a formula";

  private static final String CUSTOM =
      "custom: a decision that must follow where settings are advised";

  @TestFactory
  Stream<DynamicTest> sources() {
    double di = Level.ofPowerRatio(5);
    return CheckTable.ofTopics("M-sources", "M-levels", "M-practice")
        .notHere("M01", CUSTOM)
        .notHere("M02", CUSTOM)
        .notHere("M03", CUSTOM)
        .notHere("M04", CUSTOM)
        .notHere("M05", CUSTOM)
        .notHere("M06", CUSTOM)
        .notHere("M07", CUSTOM)
        .notHere("M08", CUSTOM)
        .notHere("M09", CUSTOM)
        .notHere("M10", CUSTOM)
        .notHere("M11", CUSTOM)
        .notHere("M12", CUSTOM)
        .notHere("M13", CUSTOM)
        .notHere("M14", CUSTOM)
        .notHere("M15", SOURCE_DATUM)
        .notHere("M16", SOURCE_DATUM)
        .notHere("M17", SOURCE_DATUM)
        .row("M18", () -> new Directivity(di, di, di, di).offAxisDb(1000, 90))
        .row("M19", () -> new Directivity(0, 3, 7, 7).indexDb(1000))
        .tests();
  }
}
