package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ProximityTest {
  private static final double C = Air.STANDARD.speedOfSoundMPerS();
  private static final Polar CARDIOID = PatternName.CARDIOID.ideal();

  @Test
  void theShortPistonFormFollowsTheFullSolutionOnTheAxis() {
    for (PatternName name : PatternName.values()) {
      for (double z : new double[] {0.02, 0.05, 0.1, 0.2, 0.4, 1}) {
        assertThat(shortForm(name, z, 0.4)).isCloseTo(fullSolution(name, z, 0.4), within(0.1));
        assertThat(shortForm(name, z, 0.6)).isCloseTo(fullSolution(name, z, 0.6), within(0.25));
      }
    }
  }

  @Test
  void theDiscFormFollowsTheSumOverItsSources() {
    double a = 0.6;
    double z = 0.3;
    double pressure = 0;
    double gradient = 0;
    int rings = 20_000;
    for (int i = 0; i < rings; i++) {
      double radius = a * (i + 0.5) / rings;
      double pathSquared = z * z + radius * radius;
      pressure += radius / pathSquared;
      gradient += radius * z * z / (pathSquared * pathSquared * pathSquared);
    }
    double equivalent = Math.sqrt(pressure / gradient);
    assertThat(Proximity.discDistanceM(a, z))
        .isCloseTo(equivalent, within(1e-6))
        .isCloseTo(0.549, within(0.0005));
  }

  @Test
  void farFromADiscItsRiseIsThatOfAPoint() {
    assertThat(Proximity.discDistanceM(0.5, 50)).isCloseTo(50, within(0.01));
  }

  @Test
  void inANullTheRiseStaysFiniteBecauseRealNullsFillUp() {
    double rise = Proximity.riseDb(CARDIOID, -1, 0.1, 100, C);
    double kr = 2 * Math.PI * 100 / C * 0.1;
    assertThat(CARDIOID.levelDbCapped(180, Polar.DEFAULT_REJECTION_CAP_DB) + rise)
        .isCloseTo(20 * Math.log10(Math.hypot(0.1, 0.5 / kr)), within(1e-9));
    assertThat(Proximity.riseDb(PatternName.FIGURE_8.ideal(), 0, 0.1, 100, C)).isEqualTo(0);
    assertThat(Proximity.pistonDb(CARDIOID, -1, 0.28, 0.1, 100, C)).isFinite();
  }

  @Test
  void aboveTheRiseAPistonIsALittleUnderAPlaneWave() {
    assertThat(Proximity.pistonDb(CARDIOID, 1, 0.28, 0.05, 4000, C)).isBetween(-3.0, -1.0);
  }

  @Test
  void theFrequencyOfARiseLeadsBackToTheRise() {
    double hz = Proximity.frequencyOfRiseHz(CARDIOID, 0.2, 6, C);
    assertThat(Proximity.riseDb(CARDIOID, 1, 0.2, hz, C)).isCloseTo(6, within(1e-9));
    assertThat(Proximity.frequencyOfRiseHz(PatternName.OMNI.ideal(), 0.2, 6, C)).isEqualTo(0);
  }

  private static double shortForm(PatternName name, double z, double ka) {
    double hz = ka / 0.28 * C / (2 * Math.PI);
    return new Radiator.Piston(0.28).proximityDb(name.ideal(), 1, z, hz, C);
  }

  /** |A + B g/p| with p = e^(−jkz) − e^(−jkR) and g = e^(−jkz) − (z/R) e^(−jkR). */
  private static double fullSolution(PatternName name, double z, double ka) {
    double k = ka / 0.28;
    double rim = Math.hypot(z, 0.28);
    double pRe = Math.cos(k * z) - Math.cos(k * rim);
    double pIm = -Math.sin(k * z) + Math.sin(k * rim);
    double gRe = Math.cos(k * z) - z / rim * Math.cos(k * rim);
    double gIm = -Math.sin(k * z) + z / rim * Math.sin(k * rim);
    double pp = pRe * pRe + pIm * pIm;
    double ratioRe = (gRe * pRe + gIm * pIm) / pp;
    double ratioIm = (gIm * pRe - gRe * pIm) / pp;
    double a = name.ideal().omniPart();
    return 20 * Math.log10(Math.hypot(a + (1 - a) * ratioRe, (1 - a) * ratioIm));
  }
}
