package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;

class BarrierLossTest {
  private static final double SPEED_M_PER_S = 343.2;
  private static final Barrier GOBO =
      new Barrier("gobo", "gobo", 2.4, 1.5, 0.1, Octaves.filled(30), Octaves.filled(0.5));
  private static final PlacedBarrier ACROSS = new PlacedBarrier(GOBO, 5, 4, 90);

  @Test
  void oneEdgeInTheOpenIsLessThanAGoboWithThree() {
    Barrier wall = new Barrier("wall", "wall", 80, 1.5, 0, Octaves.filled(90), Octaves.filled(0));
    BarrierLoss wide = loss(new PlacedBarrier(wall, 5, 4, 90), low(4), low(6));
    BarrierLoss narrow = loss(ACROSS, low(4), low(6));
    assertThat(wide.sightLineLost()).isTrue();
    assertThat(wide.overTopM()).isCloseTo(2 * Math.hypot(1, 0.7) - 2, within(1e-12));
    assertThat(narrow.overTopM()).isEqualTo(wide.overTopM());
    assertThat(narrow.aroundLeftM()).isCloseTo(2 * Math.hypot(1, 1.2) - 2, within(1e-12));
    assertThat(narrow.aroundLeftM()).isCloseTo(narrow.aroundRightM(), within(1e-12));
    assertThat(narrow.lossDb().get(Octave.HZ_1K)).isLessThan(wide.lossDb().get(Octave.HZ_1K));
  }

  @Test
  void lossRisesWithFrequencyAndWithHeightAndTheLawsAgreeWithinThreeDecibels() {
    BarrierLoss loss = loss(ACROSS, low(4), low(6));
    for (int i = 1; i < Octave.COUNT; i++) {
      Octave octave = Octave.all().get(i);
      assertThat(loss.lossDb().get(octave))
          .isGreaterThanOrEqualTo(loss.lossDb().get(Octave.all().get(i - 1)));
      assertThat(loss.lossDb().get(octave)).isBetween(0.0, 20.0);
    }
    // A thick panel's double edge is worth more to ISO 9613-2 above 1 kHz.
    assertThat(loss.isoLossDb().get(Octave.HZ_250))
        .isCloseTo(loss.lossDb().get(Octave.HZ_250), within(3.0));
  }

  @Test
  void aLineThatClearsTheTopKeepsLittleAndOneFarAboveNothing() {
    BarrierLoss grazing = loss(ACROSS, new Point3(4, 4, 1.6), new Point3(6, 4, 1.6));
    assertThat(grazing.sightLineLost()).isFalse();
    assertThat(grazing.overTopM()).isNegative();
    assertThat(grazing.lossDb().get(Octave.HZ_125)).isBetween(0.0, 5.0);
    BarrierLoss above = loss(ACROSS, new Point3(4, 4, 3), new Point3(6, 4, 3));
    assertThat(above.lossDb().get(Octave.HZ_1K)).isEqualTo(0);
  }

  @Test
  void twoPlacesOnOneSideDoNotKnowOfIt() {
    assertThat(BarrierLoss.between(ACROSS, low(4), low(3), SPEED_M_PER_S)).isEmpty();
  }

  @Test
  void theWayRoundACornerGoesNoFurtherThanTheCorner() {
    Point3 here = new Point3(4, 9, 1);
    Point3 there = new Point3(6, 9, 1);
    BarrierLoss past = loss(ACROSS, here, there);
    assertThat(past.sightLineLost()).isFalse();
    double corner = Math.hypot(Math.hypot(1, 3.8), 0.5);
    assertThat(past.overTopM()).isCloseTo(2 * corner - 2, within(1e-12));
    assertThat(past.lossDb().get(Octave.HZ_125)).isEqualTo(0);
  }

  @Test
  void aThinPanelLetsThroughWhatItsMassLawSays() {
    Octaves light = Barrier.transmissionOfMassDb(5);
    assertThat(light.get(Octave.HZ_1K) - light.get(Octave.HZ_500)).isCloseTo(6.02, within(0.02));
    assertThat(light.get(Octave.HZ_31_5)).isEqualTo(0);
    Barrier cloth =
        new Barrier("cloth", "cloth", 2.4, 1.5, 0, Octaves.filled(3), Octaves.filled(0));
    assertThat(loss(new PlacedBarrier(cloth, 5, 4, 90), low(4), low(6)).lossDb().get(Octave.HZ_8K))
        .isLessThan(3);
  }

  private static BarrierLoss loss(PlacedBarrier barrier, Point3 from, Point3 to) {
    return BarrierLoss.between(barrier, from, to, SPEED_M_PER_S).orElseThrow();
  }

  private static Point3 low(double x) {
    return new Point3(x, 4, 0.8);
  }
}
