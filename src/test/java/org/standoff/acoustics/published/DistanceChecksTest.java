package org.standoff.acoustics.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.SoundPower;
import org.standoff.fixture.CheckTable;

/** Topic G, distance: radiator laws and sound power; sources stand in each row. */
class DistanceChecksTest {
  private static final String SOURCE_DATUM = "a figure of a source's data, not of a formula";

  @TestFactory
  Stream<DynamicTest> distance() {
    return CheckTable.ofTopics("G-distance")
        .row("G01", () -> new Radiator.Point(0).levelChangeDb(1, 2))
        .row("G02", () -> new Radiator.Point(0).levelChangeDb(1, 0.05))
        .row("G03", () -> new Radiator.Piston(0.28).levelChangeDb(1, 0.05))
        .row("G04", () -> new Radiator.Piston(0.178).levelChangeDb(1, 0.05))
        .row("G05", () -> new Radiator.IncoherentDisc(0.28).levelChangeDb(1, 0.05))
        .row("G06", () -> new Radiator.Sphere(0.15).levelChangeDb(1, 0.1))
        .row("G07", () -> new Radiator.Piston(0.15).effectiveDistanceM(0))
        .row("G08", () -> SoundPower.ofWatts(12).db())
        .notHere("G09", SOURCE_DATUM)
        .notHere("G10", SOURCE_DATUM)
        .row("G11", () -> SoundPower.ofWatts(25).freeField(1, 1).db())
        .row("G33", () -> new Radiator.IncoherentDisc(0.5).effectiveDistanceM(0.005))
        .tests();
  }
}
