package org.standoff.acoustics.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Polar;

/** What must hold of means over all directions, by plain quadrature. */
class SphereLawsTest {
  private static final int RINGS = 20_000;

  @Property(seed = "21", tries = 50)
  void randomEnergyEfficiencyIsTheMeanOverTheSphere(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart) {
    Polar pattern = Polar.firstOrder(omniPart);
    assertThat(pattern.randomEnergyEfficiency())
        .isCloseTo(mean(-1, 1, cos -> square(pattern.pressure(cos))), within(1e-8));
  }

  @Property(seed = "22", tries = 50)
  void frontShareIsTheFrontHalfOfThatMean(@ForAll @DoubleRange(min = 0, max = 1) double omniPart) {
    Polar pattern = Polar.firstOrder(omniPart);
    double front = mean(0, 1, cos -> square(pattern.pressure(cos))) / 2;
    assertThat(pattern.frontShare())
        .isCloseTo(front / pattern.randomEnergyEfficiency(), within(1e-7));
  }

  @Property(seed = "23", tries = 50)
  void aSourcesOffAxisPatternMeansItsDirectivityFactor(
      @ForAll @DoubleRange(min = 0, max = 14) double di) {
    Directivity source = new Directivity(di, di, di, di);
    double mean =
        mean(
            -1, 1, cos -> Level.powerRatio(source.offAxisDb(1000, Math.toDegrees(Math.acos(cos)))));
    assertThat(mean).isCloseTo(1 / source.factor(1000), within(1e-6));
  }

  @Property(seed = "24")
  void theSupercardioidHasTheGreatestFrontShare(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart) {
    assertThat(Polar.firstOrder(omniPart).frontShare())
        .isLessThanOrEqualTo((2 + Math.sqrt(3)) / 4 + 1e-12);
  }

  @Property(seed = "25")
  void aPickupAngleLeadsBackToItsLevel(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0.1, max = 30) double downDb) {
    Polar pattern = Polar.firstOrder(omniPart);
    pattern
        .totalPickupAngleDeg(downDb)
        .ifPresent(
            total -> assertThat(pattern.levelDb(total / 2)).isCloseTo(-downDb, within(1e-6)));
    assertThat(pattern.totalPickupAngleDeg(downDb).isPresent())
        .isEqualTo(omniPart < 1 && Level.amplitudeRatio(-downDb) >= 2 * omniPart - 1);
  }

  @Property(seed = "26")
  void theAngleBetweenTwoDirectionsIsTheSameBothWaysAndUnderARoundTurn(
      @ForAll @DoubleRange(min = -180, max = 180) double az1,
      @ForAll @DoubleRange(min = -90, max = 90) double el1,
      @ForAll @DoubleRange(min = -180, max = 180) double az2,
      @ForAll @DoubleRange(min = -90, max = 90) double el2,
      @ForAll @DoubleRange(min = -180, max = 180) double turn) {
    double angle = new Direction(az1, el1).angleBetweenDeg(new Direction(az2, el2));
    assertThat(new Direction(az2, el2).angleBetweenDeg(new Direction(az1, el1)))
        .isCloseTo(angle, within(1e-9));
    assertThat(new Direction(az1 + turn, el1).angleBetweenDeg(new Direction(az2 + turn, el2)))
        .isCloseTo(angle, within(1e-9));
    assertThat(new Direction(-az1, el1).angleBetweenDeg(new Direction(-az2, el2)))
        .as("mirrored")
        .isCloseTo(angle, within(1e-9));
  }

  private static double mean(double from, double to, DoubleUnaryOperator of) {
    double sum = 0;
    for (int ring = 0; ring < RINGS; ring++) {
      sum += of.applyAsDouble(from + (to - from) * (ring + 0.5) / RINGS);
    }
    return sum / RINGS;
  }

  private static double square(double x) {
    return x * x;
  }
}
