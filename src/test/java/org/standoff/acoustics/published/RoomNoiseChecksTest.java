package org.standoff.acoustics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.NoiseRating;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.fixture.CheckTable;

/** Topic C, noise of an empty room: NC, NR and RC curves, A-weighting of IEC 61672-1. */
class RoomNoiseChecksTest {
  private static final double UNTOLD = Double.NEGATIVE_INFINITY;

  @TestFactory
  Stream<DynamicTest> roomNoise() {
    return CheckTable.ofTopics("C-room-noise")
        .row("C12", () -> NoiseRating.nc(15).get(Octave.HZ_63))
        .row("C13", () -> NoiseRating.nc(15).get(Octave.HZ_1K))
        .row("C14", () -> NoiseRating.nc(20).get(Octave.HZ_125))
        .row("C15", () -> NoiseRating.nc(20).get(Octave.HZ_8K))
        .row("C16", () -> NoiseRating.nc(25).get(Octave.HZ_250))
        .row("C17", () -> NoiseRating.nc(30).get(Octave.HZ_63))
        .row("C18", () -> NoiseRating.nc(35).get(Octave.HZ_500))
        .row("C19", () -> AWeighting.overOctaves(NoiseRating.nc(20)))
        .row("C20", () -> NoiseRating.nr(25).get(Octave.HZ_125))
        .row("C21", () -> NoiseRating.nr(20).get(Octave.HZ_4K))
        .row("C22", () -> NoiseRating.rc(25).get(Octave.HZ_125))
        .row(
            "C23",
            () ->
                NoiseRating.lowestNc(Octaves.of(UNTOLD, 45, 38, 33, 27, 20, 15, 10, 8, UNTOLD))
                    .orElseThrow())
        .row("C24", () -> AWeighting.db(Octave.HZ_125.midHz()))
        .tests();
  }

  /** IEC 61672-1, table 3, from memory: A weights in dB, printed to 0.1 dB. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "HZ_31_5, -39.4",
    "HZ_63, -26.2",
    "HZ_125, -16.1",
    "HZ_250, -8.6",
    "HZ_500, -3.2",
    "HZ_1K, 0",
    "HZ_2K, 1.2",
    "HZ_4K, 1.0",
    "HZ_8K, -1.1",
    "HZ_16K, -6.6"
  })
  void weightsMeetTheStandardsTable(Octave octave, double weightDb) {
    assertThat(AWeighting.db(octave.midHz())).isCloseTo(weightDb, within(0.05));
  }
}
