package org.standoff.acoustics.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Octave;
import org.standoff.fixture.CheckTable;

/** Topic H: ISO 9613-1, ISO 9613-2 table 2 and Cramer 1993; sources stand in each row. */
class AirChecksTest {
  @TestFactory
  Stream<DynamicTest> air() {
    return CheckTable.ofTopics("H-air")
        // The textbook law isn't used; the row bounds how far the service may be from it.
        .row("H01", () -> Air.at(20).speedOfSoundMPerS())
        .row("H02", () -> Air.STANDARD.speedOfSoundMPerS())
        .row("H03", () -> Air.at(10).speedOfSoundMPerS())
        .row("H04", () -> Air.at(30).speedOfSoundMPerS())
        .row("H05", () -> Air.at(20, 0).speedOfSoundMPerS())
        .row("H06", () -> Air.at(20, 50).speedOfSoundMPerS())
        .row("H07", () -> Air.at(25, 60).speedOfSoundMPerS())
        .row("H08", () -> dbPerKm(10, 70, Octave.HZ_1K))
        .row("H09", () -> dbPerKm(10, 70, Octave.HZ_4K))
        .row("H10", () -> dbPerKm(10, 70, Octave.HZ_8K))
        .row("H11", () -> dbPerKm(20, 70, Octave.HZ_500))
        .row("H12", () -> dbPerKm(20, 70, Octave.HZ_2K))
        .row("H13", () -> dbPerKm(20, 70, Octave.HZ_4K))
        .row("H14", () -> dbPerKm(20, 70, Octave.HZ_8K))
        .row("H15", () -> dbPerKm(15, 50, Octave.HZ_1K))
        .row("H16", () -> dbPerKm(15, 50, Octave.HZ_8K))
        .row("H17", () -> dbPerKm(30, 70, Octave.HZ_2K))
        .row("H18", () -> 1000 * Air.at(20, 50).attenuationDbPerM(4000))
        .row("H19", () -> 10 * Air.at(22, 40).attenuationDbPerM(10000))
        .tests();
  }

  private static double dbPerKm(double temperatureC, double humidityPercent, Octave octave) {
    return 1000 * Air.at(temperatureC, humidityPercent).attenuationDbPerM(octave.midHz());
  }
}
