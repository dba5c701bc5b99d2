package org.standoff.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;
import static org.standoff.fixture.ShippedPairs.layout;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Validity;
import org.standoff.fixture.Pairs;

class PairHearingTest {
  @Test
  void aSourceOnACapsuleIsRefusedByName() {
    PairHearing pair = Pairs.heard(CARDIOID, 0.30, 90);
    SourceOnCapsule refused =
        catchThrowableOfType(
            SourceOnCapsule.class,
            () -> pair.differences(new SoundOrigin.InRoom(new Point3(0.151, 0, 0))));
    assertThat(refused.channel()).isEqualTo(Channel.RIGHT);
    assertThat(refused.distanceM()).isCloseTo(0.001, within(1e-9));
    assertThat(refused).hasMessageContaining("right capsule");
  }

  @Test
  void aSweepPassesACapsuleWithFiniteFigures() {
    StereoDifferences heard =
        Pairs.heard(CARDIOID, 0.30, 90).sweeping(new SoundOrigin.InRoom(new Point3(0.15, 0, 0)));
    assertThat(heard.levelDb()).isFinite();
    assertThat(heard.right().pathM()).isEqualTo(PairHearing.LEAST_DISTANCE_M);
  }

  @Test
  void aNullIsCappedAndSaysSo() {
    StereoDifferences heard = Pairs.heard(FIGURE_8, 0, 90).differences(SoundOrigin.far(45));
    assertThat(heard.levelDb()).isCloseTo(20, within(1e-9));
    assertThat(heard.rejectionCapped()).isTrue();
    assertThat(heard.right().amplitude()).isCloseTo(0, within(1e-12));
  }

  @Test
  void behindAFigureEightBothChannelsTurnOver() {
    StereoDifferences behind = Pairs.heard(FIGURE_8, 0, 90).differences(SoundOrigin.far(170));
    assertThat(behind.left().inverted()).isTrue();
    assertThat(behind.right().inverted()).isTrue();
    assertThat(behind.oppositePolarity()).isFalse();
    assertThat(behind.levelDb()).isLessThan(0);
  }

  @Test
  void capsulesThatHearAlikeAreFlagged() {
    assertThat(Pairs.heard(CARDIOID, 0, 0).validity())
        .extracting(Validity::code)
        .containsExactly("no-difference");
    assertThat(Pairs.heard(OMNI, 0, 90).validity())
        .extracting(Validity::code)
        .containsExactly("no-difference");
    assertThat(Pairs.heard(CARDIOID, 0, 90).validity()).isEmpty();
  }

  @Test
  void discsAndTreesSayWhatIsNotComputed() {
    PairHearing disc =
        PairHearing.of(layout("baffled-omnis").usualPair(PairPlace.ORIGIN), Air.STANDARD);
    PairHearing tree =
        PairHearing.of(layout("three-omni-tree").usualPair(PairPlace.ORIGIN), Air.STANDARD);
    assertThat(disc.validity())
        .extracting(Validity::code)
        .containsExactly("disc-level-not-computed");
    assertThat(tree.validity()).extracting(Validity::code).containsExactly("centre-not-in-image");
  }

  /** Over the edge of the disc: the least of 20,000 edge points, for any place in space. */
  @Test
  void theWayOverADiscIsTheShortestOfAll() {
    Pair pair = layout("baffled-omnis").usualPair(PairPlace.ORIGIN);
    PairHearing hearing = PairHearing.of(pair, Air.STANDARD);
    Random random = new Random(3);
    int shadowed = 0;
    for (int tries = 0; tries < 50; tries++) {
      Point3 place =
          new Point3(
              0.3 + 3 * random.nextDouble(),
              4 * random.nextDouble() - 2,
              2 * random.nextDouble() - 1);
      Heard left = hearing.differences(new SoundOrigin.InRoom(place)).left();
      if (left.shadowed()) {
        shadowed++;
        assertThat(left.pathM()).isCloseTo(overEdgeM(place, -0.165 / 2, 0.15), within(1e-6));
      } else {
        assertThat(left.pathM())
            .isCloseTo(place.distanceToM(new Point3(-0.165 / 2, 0, 0)), within(1e-12));
      }
    }
    assertThat(shadowed).isBetween(5, 45);
  }

  @Test
  void theShadowBeginsWithoutAStep() {
    PairHearing hearing =
        PairHearing.of(layout("baffled-omnis").usualPair(PairPlace.ORIGIN), Air.STANDARD);
    double edgeDeg = Math.toDegrees(Math.atan2(0.165 / 2, 0.15));
    StereoDifferences before = hearing.differences(SoundOrigin.far(edgeDeg - 1e-6));
    StereoDifferences after = hearing.differences(SoundOrigin.far(edgeDeg + 1e-6));
    assertThat(before.right().shadowed()).isFalse();
    assertThat(after.right().shadowed()).isTrue();
    assertThat(after.timeMs()).isCloseTo(before.timeMs(), within(1e-6));
  }

  @Test
  void whatMakesNoPairIsRefused() {
    Capsule left = Pairs.capsule(Channel.LEFT, -0.1, 45, CARDIOID.ideal());
    Capsule right = Pairs.capsule(Channel.RIGHT, 0.1, -45, CARDIOID.ideal());
    Capsule mid = Pairs.capsule(Channel.MID, 0, 0, CARDIOID.ideal());
    for (List<Capsule> capsules :
        List.of(
            List.<Capsule>of(),
            List.of(left),
            List.of(left, left),
            List.of(left, mid),
            List.of(left, right, mid))) {
      assertThatThrownBy(() -> Pair.of(capsules, PairPlace.ORIGIN))
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(
            () ->
                new Pair(
                    List.of(left, right), Optional.empty(), Optional.empty(), 0, PairPlace.ORIGIN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Pairs.capsule(Channel.LEFT, Double.NaN, 45, CARDIOID.ideal()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PairPlace(new Point3(0, 0, Double.NaN), 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SoundOrigin.InRoom(new Point3(0, Double.NaN, 0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SoundOrigin.at(0, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SoundOrigin.Far(new Direction(Double.NaN, 0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static double overEdgeM(Point3 place, double capsuleXM, double radiusM) {
    Point3 capsule = new Point3(capsuleXM, 0, 0);
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < 20_000; at++) {
      double turn = 2 * Math.PI * at / 20_000;
      Point3 edge = new Point3(0, radiusM * Math.cos(turn), radiusM * Math.sin(turn));
      least = Math.min(least, place.distanceToM(edge) + edge.distanceToM(capsule));
    }
    return least;
  }
}
