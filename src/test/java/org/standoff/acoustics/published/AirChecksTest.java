package org.standoff.acoustics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /**
   * ISO 9613-2:1996, table 2, in dB/km at 63 Hz to 8 kHz, as reproduced in several public sources;
   * held to half a step of its last printed digit.
   */
  @ParameterizedTest(name = "{0} °C, {1} %")
  @CsvSource({
    "10, 70, 0.1 0.4 1.0 1.9 3.7 9.7 32.8 117",
    "20, 70, 0.1 0.3 1.1 2.8 5.0 9.0 22.9 76.6",
    "30, 70, 0.1 0.3 1.0 3.1 7.4 12.7 23.1 59.3",
    "15, 20, 0.3 0.6 1.2 2.7 8.2 28.2 88.8 202",
    "15, 50, 0.1 0.5 1.2 2.2 4.2 10.8 36.2 129"
  })
  void attenuationMeetsTheWholeTable(
      double temperatureC, double humidityPercent, String dbPerKmOfOctaves) {
    String[] printed = dbPerKmOfOctaves.split(" ");
    for (int band = 0; band < printed.length; band++) {
      Octave octave = Octave.all().get(Octave.HZ_63.ordinal() + band);
      double halfStep = printed[band].contains(".") ? 0.05 : 0.5;
      assertThat(dbPerKm(temperatureC, humidityPercent, octave))
          .as("%s Hz", octave.label())
          .isCloseTo(Double.parseDouble(printed[band]), within(halfStep));
    }
  }

  private static double dbPerKm(double temperatureC, double humidityPercent, Octave octave) {
    return 1000 * Air.at(temperatureC, humidityPercent).attenuationDbPerM(octave.midHz());
  }
}
