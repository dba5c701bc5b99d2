package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DirectionTest {
  private static final Point3 ORIGIN = new Point3(0, 0, 0);

  @Test
  void azimuthCountsFromTheFrontToTheLeft() {
    assertThat(ORIGIN.directionTo(new Point3(0, 2, 0))).isEqualTo(Direction.FRONT);
    assertThat(ORIGIN.directionTo(new Point3(-2, 0, 0)).azimuthDeg()).isCloseTo(90, within(1e-9));
    assertThat(ORIGIN.directionTo(new Point3(3, 3, 0)).azimuthDeg()).isCloseTo(-45, within(1e-9));
    assertThat(ORIGIN.directionTo(new Point3(0, 1, 1)).elevationDeg()).isCloseTo(45, within(1e-9));
    assertThat(ORIGIN.directionTo(new Point3(0, 0, -1)).elevationDeg()).isEqualTo(-90);
  }

  @Test
  void aDirectionLeadsBackToThePlace() {
    Point3 from = new Point3(9.1, 6.7, 2.0);
    Point3 to = new Point3(11.6, 5.2, 1.5);
    Point3 reached = from.moved(from.directionTo(to), from.distanceToM(to));
    assertThat(reached.distanceToM(to)).isLessThan(1e-12);
    assertThat(from.distanceToM(to)).isCloseTo(2.96, within(0.005));
  }

  @Test
  void thePlaceItselfLiesStraightAhead() {
    assertThat(ORIGIN.directionTo(ORIGIN)).isEqualTo(Direction.FRONT);
  }

  @Test
  void anglesAreExactEvenWhenSmall() {
    assertThat(Direction.FRONT.angleBetweenDeg(new Direction(1e-7, 0)))
        .isCloseTo(1e-7, within(1e-16));
    assertThat(new Direction(30, 0).angleBetweenDeg(new Direction(-30, 0)))
        .isCloseTo(60, within(1e-9));
    assertThat(Direction.FRONT.angleBetweenDeg(new Direction(180, 0))).isCloseTo(180, within(1e-9));
    assertThat(new Direction(17, 90).angleBetweenDeg(new Direction(-80, 20)))
        .isCloseTo(70, within(1e-9));
    assertThat(Direction.FRONT.cosTo(new Direction(60, 0))).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void theOppositeLooksTheOtherWay() {
    Direction aim = new Direction(35, -20);
    assertThat(aim.angleBetweenDeg(aim.opposite())).isCloseTo(180, within(1e-5));
    assertThat(aim.opposite().elevationDeg()).isCloseTo(20, within(1e-9));
  }

  @Test
  void directionsThatDoNotExistAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Direction(0, 91));
    assertThatIllegalArgumentException().isThrownBy(() -> new Direction(Double.NaN, 0));
  }
}
