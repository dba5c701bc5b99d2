package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.SoundPower;

class HearingTest {
  private static final double CAP_DB = 20;
  private static final Polar OMNI = PatternName.OMNI.ideal();
  private static final Polar CARDIOID = PatternName.CARDIOID.ideal();

  /** A hall of 655 m³ with 70 m² of absorption on 474 m². */
  private static final Room HALL =
      new Room(655, 474, Octaves.filled(70), new Box(14, 9, 5.2), Air.STANDARD, 28);

  @Test
  void nothingAroundIsSilence() {
    assertThat(Hearing.unwantedDb(CARDIOID, CAP_DB, Surroundings.NONE))
        .isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void neighboursAddAsEnergies() {
    Surroundings two =
        around(Optional.empty(), neighbour(80, 0), neighbour(80, 0), neighbour(77, 90));
    double expected = 10 * Math.log10(2e8 + Math.pow(10, 7.7));
    assertThat(Hearing.unwantedDb(OMNI, CAP_DB, two)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void aNeighbourAtTheSideOfACardioidIsSixDbDown() {
    assertThat(Hearing.directDb(neighbour(80, 90), CARDIOID, CAP_DB))
        .isCloseTo(80 - 20 * Math.log10(2), within(1e-9));
  }

  @Test
  void aNullIsBelievedOnlyDownToTheMicrophonesCap() {
    assertThat(Hearing.directDb(neighbour(80, 180), CARDIOID, CAP_DB)).isEqualTo(60);
    assertThat(Hearing.directDb(neighbour(80, 180), CARDIOID, 14)).isEqualTo(66);
    assertThat(Hearing.directDb(neighbour(80, 90), PatternName.FIGURE_8.ideal(), CAP_DB))
        .isEqualTo(60);
  }

  /** Late field of 108 dB of sound power in the hall: 94.9 dB (row W14), derived. */
  @Test
  void theLateFieldOfANeighbourComesThroughThePatternsRandomEnergyWhereverItPoints() {
    Neighbour drums = new Neighbour("Drums", new RmsSpl(81), 180, Optional.of(new SoundPower(108)));
    Surroundings hall = around(Optional.of(HALL), drums);
    assertThat(Hearing.lateDb(new SoundPower(108), OMNI, HALL)).isCloseTo(94.9, within(0.05));
    assertThat(Hearing.lateDb(new SoundPower(108), CARDIOID, HALL))
        .isCloseTo(94.9 - 4.77, within(0.06));
    double both =
        10
            * Math.log10(
                Math.pow(10, 6.1)
                    + Math.pow(10, Hearing.lateDb(new SoundPower(108), CARDIOID, HALL) / 10));
    assertThat(Hearing.unwantedDb(CARDIOID, CAP_DB, hall)).isCloseTo(both, within(1e-9));
  }

  @Test
  void withoutARoomOrAPowerOnlyTheDirectSoundIsCounted() {
    Neighbour powerful =
        new Neighbour("Drums", new RmsSpl(81), 0, Optional.of(new SoundPower(108)));
    assertThat(Hearing.unwantedDb(OMNI, CAP_DB, around(Optional.empty(), powerful)))
        .isCloseTo(81, within(1e-9));
    assertThat(Hearing.unwantedDb(OMNI, CAP_DB, around(Optional.of(HALL), neighbour(81, 0))))
        .isCloseTo(81, within(1e-9));
  }

  @Test
  void aDiffuseFieldComesThroughTheRandomEnergyEfficiency() {
    Surroundings diffuse =
        new Surroundings(
            Optional.empty(), OptionalDouble.empty(), List.of(), OptionalDouble.of(85));
    assertThat(Hearing.unwantedDb(OMNI, CAP_DB, diffuse)).isCloseTo(85, within(1e-9));
    assertThat(Hearing.unwantedDb(PatternName.HYPERCARDIOID.ideal(), CAP_DB, diffuse))
        .isCloseTo(85 - 10 * Math.log10(4), within(1e-9));
  }

  private static Neighbour neighbour(double directDb, double angleDeg) {
    return new Neighbour("Neighbour", new RmsSpl(directDb), angleDeg, Optional.empty());
  }

  private static Surroundings around(Optional<Room> room, Neighbour... neighbours) {
    return new Surroundings(
        room, OptionalDouble.empty(), List.of(neighbours), OptionalDouble.empty());
  }
}
