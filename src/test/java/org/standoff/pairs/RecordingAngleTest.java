package org.standoff.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.fixture.ShippedPairs.model;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.fixture.Pairs;
import org.standoff.fixture.ShippedPairs;
import org.standoff.pairs.listening.ListeningModel;

class RecordingAngleTest {
  private static final ListeningModel STRAIGHT = model("straight-trade");
  private static final ListeningModel TWO_REGION = model("two-region");

  @Test
  void thereIsNoneWhenTheLimitIsNeverReached() {
    RecordingAngle angle = RecordingAngle.far(Pairs.heard(OMNI, 0.1, 0), TWO_REGION);
    assertThat(angle.leftDeg()).isEmpty();
    assertThat(angle.totalDeg()).isEmpty();
    assertThat(angle.modelId()).isEqualTo("core/two-region");
  }

  @Test
  void bothSidesOfASymmetricalPairAreAlike() {
    RecordingAngle angle = RecordingAngle.far(Pairs.heard(CARDIOID, 0.17, 110), TWO_REGION);
    assertThat(angle.leftDeg().orElseThrow())
        .isCloseTo(angle.rightDeg().orElseThrow(), within(1e-9));
  }

  @Test
  void aPairTurnedOnItsBarLeansOver() {
    Pair turned =
        Pair.of(
            List.of(
                Pairs.capsule(Channel.LEFT, -0.085, 75, CARDIOID.ideal()),
                Pairs.capsule(Channel.RIGHT, 0.085, -35, CARDIOID.ideal())),
            PairPlace.ORIGIN);
    RecordingAngle angle = RecordingAngle.far(PairHearing.of(turned, Air.STANDARD), TWO_REGION);
    assertThat(angle.leftDeg().orElseThrow()).isGreaterThan(angle.rightDeg().orElseThrow());
  }

  /** Charts assume far sources: 40 cm and 90° take 78° far away but about 72° at 2.5 m. */
  @Test
  void nearSourcesReachTheSideEarlier() {
    PairHearing pair = Pairs.heard(CARDIOID, 0.40, 90);
    double farDeg = RecordingAngle.far(pair, STRAIGHT).totalDeg().orElseThrow();
    double nearDeg = RecordingAngle.at(pair, STRAIGHT, 2.5).totalDeg().orElseThrow();
    assertThat(farDeg).isCloseTo(78, within(0.5));
    assertThat(nearDeg).isCloseTo(71.6, within(0.5));
    assertThat(RecordingAngle.at(pair, STRAIGHT, 1e5).totalDeg().orElseThrow())
        .isCloseTo(farDeg, within(0.01));
  }

  @Test
  void theLimitIsMetAtTheAngleAndNotBefore() {
    PairHearing pair = Pairs.heard(CARDIOID, 0.30, 90);
    for (ListeningModel model : ShippedPairs.models()) {
      double leftDeg = RecordingAngle.far(pair, model).leftDeg().orElseThrow();
      StereoDifferences at = pair.differences(SoundOrigin.far(leftDeg));
      StereoDifferences before = pair.differences(SoundOrigin.far(leftDeg - 0.01));
      assertThat(model.sidewaysPct(at.levelDb(), at.timeMs())).isCloseTo(100, within(1e-6));
      assertThat(model.sidewaysPct(before.levelDb(), before.timeMs())).isLessThan(100);
    }
  }

  @Test
  void aDistanceMustBeOne() {
    PairHearing pair = Pairs.heard(CARDIOID, 0.30, 90);
    for (double distanceM : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> RecordingAngle.at(pair, STRAIGHT, distanceM))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
