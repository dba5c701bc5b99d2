package org.standoff.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.fixture.ShippedPairs.layout;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.Pairs;
import org.standoff.pairs.SettingOut.CapsuleMark;
import org.standoff.pairs.SettingOut.TapeMeasure;

class SettingOutTest {
  private static final PairPlace AT_HORNS = new PairPlace(new Point3(9.1, 6.7, 2.0), -90, 0);

  @Test
  void capsulesStandAcrossTheWayThePairLooks() {
    SettingOut out = SettingOut.of(Pairs.of(CARDIOID, 0.40, 120).at(AT_HORNS), Map.of());
    CapsuleMark left = out.capsules().get(0);
    assertThat(left.channel()).isEqualTo(Channel.LEFT);
    assertThat(left.place().distanceToM(new Point3(9.1, 6.9, 2.0))).isLessThan(1e-12);
    assertThat(left.aim().azimuthDeg()).isCloseTo(-30, within(1e-9));
    assertThat(left.fromMiddleDeg()).isEqualTo(60);
    assertThat(left.fromBarDeg()).isCloseTo(30, within(1e-9));
    assertThat(out.capsules().get(1).place().distanceToM(new Point3(9.1, 6.5, 2.0)))
        .isLessThan(1e-12);
  }

  /** Distances of the three horns from the middle of their pair, worked by hand to 1 cm. */
  @Test
  void tapesReachThePlayers() {
    SettingOut out =
        SettingOut.of(
            Pairs.of(CARDIOID, 0, 90).at(AT_HORNS),
            Map.of(
                "trumpet", new Point3(11.6, 5.2, 1.5),
                "alto", new Point3(11.6, 6.7, 1.1),
                "trombone", new Point3(11.6, 8.2, 1.4)));
    assertThat(out.toMarks()).hasSize(6);
    assertThat(out.toMarks().subList(0, 3))
        .extracting(TapeMeasure::to)
        .containsExactly("alto", "trombone", "trumpet");
    assertThat(out.toMarks().get(0).lengthM()).isCloseTo(2.66, within(0.005));
    assertThat(out.toMarks().get(1).lengthM()).isCloseTo(2.98, within(0.005));
    assertThat(out.toMarks().get(2).lengthM()).isCloseTo(2.96, within(0.005));
  }

  @Test
  void aTreeHasThreeTapesBetweenItsCapsules() {
    Pair tree = layout("three-omni-tree").usualPair(new PairPlace(new Point3(0, 0, 3), 0, 30));
    SettingOut out = SettingOut.of(tree, Map.of());
    assertThat(out.betweenCapsules())
        .extracting(TapeMeasure::from, TapeMeasure::to)
        .containsExactly(tuple("left", "right"), tuple("left", "centre"), tuple("right", "centre"));
    assertThat(out.betweenCapsules().get(0).lengthM()).isCloseTo(2.0, within(1e-12));
    assertThat(out.betweenCapsules().get(1).lengthM()).isCloseTo(Math.hypot(1, 1.5), within(1e-12));
    CapsuleMark centre = out.capsules().get(2);
    assertThat(centre.place().zM()).isCloseTo(3 - 0.75, within(1e-12));
    assertThat(centre.aim().elevationDeg()).isCloseTo(-30, within(1e-9));
  }
}
