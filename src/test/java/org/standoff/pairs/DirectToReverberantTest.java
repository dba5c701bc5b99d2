package org.standoff.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.fixture.Pairs;

class DirectToReverberantTest {
  private static final Room HALL =
      new Room(655, 474, Octaves.filled(70), new Box(14, 9, 5.2), Air.at(21), 28);

  /** Critical distance 1.18 m and mean absorption 0.148: −3.9 dB at 2 m, −9.9 at 4 m by hand. */
  @Test
  void anOmniHearsMoreRoomFartherBack() {
    assertThat(midDb(OMNI, 0, 2)).isCloseTo(-3.9, within(0.05));
    assertThat(midDb(OMNI, 0, 4)).isCloseTo(-9.9, within(0.05));
  }

  @Test
  void aCardioidOnItsAxisGainsItsDirectivity() {
    assertThat(midDb(CARDIOID, 0, 2) - midDb(OMNI, 0, 2)).isCloseTo(4.77, within(0.005));
  }

  @Test
  void offItsAxisEachChannelLosesWhatItsPatternLoses() {
    double onAxis = midDb(CARDIOID, 0, 2);
    assertThat(midDb(CARDIOID, 90, 2) - onAxis).isCloseTo(20 * Math.log10(0.8536), within(0.001));
  }

  @Test
  void aNullIsFinite() {
    List<DirectToReverberant> channels =
        DirectToReverberant.of(Pairs.heard(FIGURE_8, 0, 90), new Point3(-2, 2, 0), HALL, 1);
    assertThat(channels.get(0).midDb() - channels.get(1).midDb()).isCloseTo(20, within(1e-9));
  }

  @Test
  void aRoomThatAbsorbsEverythingTellsTheMost() {
    Room open = new Room(655, 474, Octaves.filled(500), new Box(14, 9, 5.2), Air.at(21), 28);
    DirectToReverberant left =
        DirectToReverberant.of(Pairs.heard(OMNI, 0.4, 0), new Point3(0, 2, 0), open, 1).get(0);
    assertThat(left.midDb()).isEqualTo(DirectToReverberant.MOST_DB);
    assertThat(left.octavesDb().get(Octave.HZ_1K)).isEqualTo(DirectToReverberant.MOST_DB);
  }

  @Test
  void aSourceNeedsADirectivityFactor() {
    assertThatThrownBy(
            () -> DirectToReverberant.of(Pairs.heard(OMNI, 0.4, 0), new Point3(0, 2, 0), HALL, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static double midDb(PatternName pattern, double angleDeg, double distanceM) {
    return DirectToReverberant.of(
            Pairs.heard(pattern, 0, angleDeg), new Point3(0, distanceM, 0), HALL, 1)
        .get(0)
        .midDb();
  }
}
