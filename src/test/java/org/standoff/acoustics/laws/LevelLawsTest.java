package org.standoff.acoustics.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.standoff.acoustics.Level;

class LevelLawsTest {
  @Property(seed = "1")
  void theOrderOfAnEnergySumDoesNotMatter(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = -200, max = 200) Double> levels) {
    List<Double> reversed = new ArrayList<>(levels);
    Collections.reverse(reversed);
    assertThat(Level.energySum(array(reversed)))
        .isCloseTo(Level.energySum(array(levels)), within(1e-9));
  }

  @Property(seed = "2")
  void anEnergySumIsNeverBelowItsLargestTermNorAboveAsManyOfIt(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = -200, max = 200) Double> levels) {
    double largest = Collections.max(levels);
    assertThat(Level.energySum(array(levels)))
        .isBetween(largest, largest + 10 * Math.log10(levels.size()) + 1e-9);
  }

  @Property(seed = "3")
  void inPhaseIsTheLoudestWayToMeet(
      @ForAll @DoubleRange(min = -100, max = 150) double aDb,
      @ForAll @DoubleRange(min = -100, max = 150) double bDb,
      @ForAll @DoubleRange(min = -720, max = 720) double phaseDeg) {
    assertThat(Level.inPhaseSum(aDb, bDb))
        .isGreaterThanOrEqualTo(Level.energySum(aDb, bDb))
        .isGreaterThanOrEqualTo(Level.phasorSum(aDb, bDb, phaseDeg) - 1e-9)
        .isCloseTo(Level.phasorSum(aDb, bDb, 0), within(1e-9));
  }

  private static double[] array(List<Double> levels) {
    return levels.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
