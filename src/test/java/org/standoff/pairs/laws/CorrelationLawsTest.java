package org.standoff.pairs.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.fixture.Pairs;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;
import org.standoff.pairs.DiffuseCorrelation;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;

/** The closed form of the correlation against its limits and two independent references. */
class CorrelationLawsTest {
  private static final double C = Air.STANDARD.speedOfSoundMPerS();
  private static final GaussIntegrator RINGS = new GaussIntegratorFactory().legendre(40);
  private static final int STEPS_AROUND = 80;

  @Property(seed = "403", tries = 200)
  void equalCapsulesInOnePointHearTheSame(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 20000) double hz) {
    assertThat(horizontal(omniPart, 0, 0).at(hz)).isCloseTo(1, within(1e-12));
  }

  @Property(seed = "404", tries = 200)
  void farApartForTheWavelengthNothingIsCommon(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll @DoubleRange(min = 4000, max = 20000) double hz) {
    double kd = 2 * Math.PI * hz / C * 3;
    assertThat(Math.abs(horizontal(omniPart, 3, angleDeg).at(hz))).isLessThan(8 / kd);
  }

  @Property(seed = "405", tries = 500)
  void neverPassesOne(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 3) double spacingM,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll @DoubleRange(min = 0, max = 20000) double hz) {
    assertThat(horizontal(omniPart, spacingM, angleDeg).at(hz)).isBetween(-1 - 1e-9, 1 + 1e-9);
  }

  @Property(seed = "406", tries = 100)
  void unequalCapsulesAnywhereAgreeWithQuadratureAtModerateKd(
      @ForAll @DoubleRange(min = 0, max = 1) double leftOmniPart,
      @ForAll @DoubleRange(min = 0, max = 1) double rightOmniPart,
      @ForAll @DoubleRange(min = -90, max = 90) double azimuthDeg,
      @ForAll @DoubleRange(min = -60, max = 60) double elevationDeg,
      @ForAll @DoubleRange(min = 0, max = 0.8) double spacingM,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double heightM,
      @ForAll @DoubleRange(min = 20, max = 600) double hz) {
    Capsule left =
        new Capsule(
            Channel.LEFT,
            new Point3(-spacingM / 2, 0, heightM),
            new Direction(azimuthDeg, elevationDeg),
            Polar.firstOrder(leftOmniPart));
    Capsule right =
        Pairs.capsule(Channel.RIGHT, spacingM / 2, -40, Polar.firstOrder(rightOmniPart));
    Pair pair = Pair.of(List.of(left, right), PairPlace.ORIGIN);
    double closed = DiffuseCorrelation.of(PairHearing.of(pair, Air.STANDARD)).at(hz);
    assertThat(closed).isCloseTo(quadrature(left, right, hz), within(1e-10));
  }

  /** Standard error of 400,000 directions is 0.002 at most; the bound is three of them. */
  @Test
  void agreesWithRandomDirectionsOverTheSphere() {
    Pair pair = Pairs.of(PatternName.CARDIOID, 0.30, 90);
    Capsule left = pair.capsule(Channel.LEFT).orElseThrow();
    Capsule right = pair.capsule(Channel.RIGHT).orElseThrow();
    Random random = new Random(20270611);
    for (double hz : new double[] {100, 400, 1600, 6400}) {
      double product = 0;
      double leftSquare = 0;
      double rightSquare = 0;
      for (int sample = 0; sample < 400_000; sample++) {
        double z = 2 * random.nextDouble() - 1;
        double turn = 2 * Math.PI * random.nextDouble();
        double level = Math.sqrt(1 - z * z);
        Direction from = Direction.ofVector(level * Math.cos(turn), level * Math.sin(turn), z);
        double one = left.pattern().pressure(left.aim().cosTo(from));
        double other = right.pattern().pressure(right.aim().cosTo(from));
        product += one * other * Math.cos(2 * Math.PI * hz / C * 0.30 * from.x());
        leftSquare += one * one;
        rightSquare += other * other;
      }
      double sampled = product / Math.sqrt(leftSquare * rightSquare);
      double closed = DiffuseCorrelation.of(PairHearing.of(pair, Air.STANDARD)).at(hz);
      assertThat(closed).as("at %s Hz", hz).isCloseTo(sampled, within(0.006));
    }
  }

  @Property(seed = "407", tries = 200)
  void seriesAndClosedFormMeetWithoutAStep(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg) {
    double spacingM = 0.2;
    double hzAtSwitch = 0.1 * C / (2 * Math.PI * spacingM);
    DiffuseCorrelation correlation = horizontal(omniPart, spacingM, angleDeg);
    assertThat(correlation.at(hzAtSwitch * (1 + 1e-9)))
        .isCloseTo(correlation.at(hzAtSwitch * (1 - 1e-9)), within(1e-10));
  }

  /**
   * Gauss-Legendre from pole to pole and equal steps around each ring: for these smooth fields both
   * are exact to rounding, where equal rings would be off by up to the square of their width.
   */
  private static double quadrature(Capsule left, Capsule right, double hz) {
    double k = 2 * Math.PI * hz / C;
    double product = 0;
    double leftSquare = 0;
    double rightSquare = 0;
    for (int ring = 0; ring < RINGS.getNumberOfPoints(); ring++) {
      double z = RINGS.getPoint(ring);
      double weight = RINGS.getWeight(ring);
      double level = Math.sqrt(1 - z * z);
      for (int at = 0; at < STEPS_AROUND; at++) {
        double turn = 2 * Math.PI * at / STEPS_AROUND;
        double x = level * Math.cos(turn);
        double y = level * Math.sin(turn);
        double one = response(left, x, y, z);
        double other = response(right, x, y, z);
        double way =
            x * (right.position().xM() - left.position().xM())
                + y * (right.position().yM() - left.position().yM())
                + z * (right.position().zM() - left.position().zM());
        product += weight * one * other * Math.cos(k * way);
        leftSquare += weight * one * one;
        rightSquare += weight * other * other;
      }
    }
    return product / Math.sqrt(leftSquare * rightSquare);
  }

  private static double response(Capsule capsule, double x, double y, double z) {
    double cos = x * capsule.aim().x() + y * capsule.aim().y() + z * capsule.aim().z();
    return capsule.pattern().pressure(cos);
  }

  private static DiffuseCorrelation horizontal(double omniPart, double spacingM, double angleDeg) {
    return DiffuseCorrelation.of(
        PairHearing.of(Pairs.of(Polar.firstOrder(omniPart), spacingM, angleDeg), Air.STANDARD));
  }
}
