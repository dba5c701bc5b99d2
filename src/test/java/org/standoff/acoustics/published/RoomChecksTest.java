package org.standoff.acoustics.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.acoustics.PatternName.SUPERCARDIOID;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.LateField;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Reverberation;
import org.standoff.acoustics.SoundPower;
import org.standoff.fixture.CheckTable;

/** Topic G, rooms: Sabine, Eyring, Beranek, Schroeder and one late field for all. */
class RoomChecksTest {
  /** The rows that give no surface take the mean absorption as 0. */
  private static final double NO_ABSORPTION = Double.POSITIVE_INFINITY;

  @TestFactory
  Stream<DynamicTest> rooms() {
    return CheckTable.ofTopics("G-rooms")
        .row("G12", () -> LateField.roomConstantM2(40, 200))
        .row("G13", () -> directAndLate(1))
        .row("G14", () -> directAndLate(4))
        .row("G15", () -> Reverberation.sabineS(60, 0.3 * 94))
        .row("G16", () -> Reverberation.eyringS(60, 0.3 * 94, 94, 0))
        .row("G17", RoomChecksTest::largeRoomWithAir)
        .row("G18", RoomChecksTest::airAt4kHz)
        .row("G19", () -> criticalDistanceM(60, 0.3, 1))
        .row("G20", () -> criticalDistanceM(150, 0.5, 1))
        .row("G21", () -> criticalDistanceM(500, 0.9, 1))
        .row("G22", () -> criticalDistanceM(5000, 1.8, 1))
        .row("G23", () -> criticalDistanceM(500, 1.2, 2))
        .row("G24", () -> criticalDistanceM(150, 0.5, 1) * CARDIOID.ideal().distanceFactor())
        .row("G25", () -> directToLate(OMNI, 0))
        .row("G26", () -> directToLate(HYPERCARDIOID, 0))
        .row("G27", () -> directToLate(CARDIOID, 90))
        .row("G28", () -> Reverberation.schroederHz(60, 0.3))
        .row("G29", () -> LateField.levelDb(100, 70, 474, 0))
        .row("G30", () -> LateField.levelDb(100, 70, 474, 2))
        .row(
            "G31",
            () -> LateField.levelDb(100, 70, 474, 0) - SUPERCARDIOID.ideal().directivityIndexDb())
        .row("G32", () -> LateField.directToLateDb(1, CARDIOID.ideal(), 1, 2, 70, 474, 0))
        .tests();
  }

  private static double directAndLate(double factor) {
    double direct = new SoundPower(100).freeField(2, factor).db();
    return Level.energySum(direct, LateField.levelDb(100, 40, 200, 0));
  }

  private static double airAt4kHz() {
    return Air.at(20, 70).energyAttenuationPerM(Octave.HZ_4K.midHz());
  }

  private static double largeRoomWithAir() {
    return Reverberation.sabineS(5000, 0.2 * 1900 + 4 * airAt4kHz() * 5000);
  }

  private static double criticalDistanceM(double volumeM3, double decayS, double factor) {
    double area = Reverberation.areaOfDecayM2(volumeM3, decayS);
    return Reverberation.criticalDistanceM(area, factor);
  }

  private static double directToLate(PatternName microphone, double angleDeg) {
    return LateField.directToLateDb(
        1,
        microphone.ideal(),
        Math.cos(Math.toRadians(angleDeg)),
        2,
        Reverberation.areaOfDecayM2(500, 0.9),
        NO_ABSORPTION,
        0);
  }
}
