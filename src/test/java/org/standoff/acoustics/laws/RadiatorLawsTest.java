package org.standoff.acoustics.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.Radiator;

class RadiatorLawsTest {
  private static final double C = Air.STANDARD.speedOfSoundMPerS();

  @Property(seed = "11")
  void closerNeverLowersThePeak(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double oneM,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double otherM) {
    double near = Math.min(oneM, otherM);
    double far = Math.max(oneM, otherM);
    assertThat(radiator.levelChangeDb(far, near)).isGreaterThanOrEqualTo(0);
  }

  @Property(seed = "12")
  void noRadiatorRisesFasterThanAPoint(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double oneM,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double otherM) {
    double near = Math.min(oneM, otherM);
    double far = Math.max(oneM, otherM);
    assertThat(radiator.levelChangeDb(far, near))
        .isLessThanOrEqualTo(new Radiator.Point(0).levelChangeDb(far, near) + 1e-9);
  }

  @Property(seed = "13")
  void aWayInStagesIsTheWholeWay(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double fromM,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double overM,
      @ForAll @DoubleRange(min = 0.001, max = 20) @Scale(4) double toM) {
    assertThat(radiator.levelChangeDb(fromM, overM) + radiator.levelChangeDb(overM, toM))
        .isCloseTo(radiator.levelChangeDb(fromM, toM), within(1e-9));
  }

  @Property(seed = "14")
  void farAwayEverySpreadingSourceIsAPoint(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = 1, max = 5) double furtherBy) {
    double far = 500 * radiator.radiusM() + 1;
    double expected = radiator instanceof Radiator.Shell ? 0 : -20 * Math.log10(furtherBy);
    assertThat(radiator.levelChangeDb(far, far * furtherBy)).isCloseTo(expected, within(0.02));
  }

  @Property(seed = "15")
  void theProximityRiseFallsWithDistance(
      @ForAll("spreading") Radiator radiator,
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = -1, max = 1) double cosTheta,
      @ForAll @DoubleRange(min = 0.01, max = 5) double oneM,
      @ForAll @DoubleRange(min = 0.01, max = 5) double otherM,
      @ForAll @DoubleRange(min = 20, max = 16000) double hz) {
    Polar pattern = Polar.firstOrder(omniPart);
    double near = radiator.proximityDb(pattern, cosTheta, Math.min(oneM, otherM), hz, C);
    double far = radiator.proximityDb(pattern, cosTheta, Math.max(oneM, otherM), hz, C);
    assertThat(near).isGreaterThanOrEqualTo(far - 1e-12);
    assertThat(far).isGreaterThanOrEqualTo(0);
  }

  @Property(seed = "16")
  void anOmniNeverRises(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = -1, max = 1) double cosTheta,
      @ForAll @DoubleRange(min = 0.01, max = 5) double z,
      @ForAll @DoubleRange(min = 20, max = 16000) double hz) {
    assertThat(radiator.proximityDb(PatternName.OMNI.ideal(), cosTheta, z, hz, C))
        .isCloseTo(0, within(1e-12));
  }

  @Property(seed = "17")
  void theProximityRiseFallsWithFrequency(
      @ForAll("radiators") Radiator radiator,
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0.01, max = 5) double z,
      @ForAll @DoubleRange(min = 20, max = 8000) double hz) {
    Polar pattern = Polar.firstOrder(omniPart);
    assertThat(radiator.proximityDb(pattern, 1, z, hz, C))
        .isGreaterThanOrEqualTo(radiator.proximityDb(pattern, 1, z, 2 * hz, C));
  }

  @Provide
  Arbitrary<Radiator> radiators() {
    return ofIds("point", "sphere", "piston", "incoherent-disc", "shell");
  }

  /** Without pistons, whose in-phase part grows with distance near the surface. */
  @Provide
  Arbitrary<Radiator> spreading() {
    return ofIds("point", "sphere", "incoherent-disc");
  }

  private static Arbitrary<Radiator> ofIds(String... ids) {
    return Combinators.combine(
            Arbitraries.of(Stream.of(ids).toList()),
            Arbitraries.doubles().between(0.01, 5).ofScale(4))
        .as((id, radiusM) -> Radiator.ofId(id, radiusM).orElseThrow());
  }
}
