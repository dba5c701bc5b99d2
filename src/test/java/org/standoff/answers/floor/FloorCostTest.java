package org.standoff.answers.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.answers.CpuBudget;
import org.standoff.fixture.Floors;
import org.standoff.floor.Barrier;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.PlacedBarrier;

/** The estimates count sizes alone, so that one microphone may stand for all. */
class FloorCostTest {
  private static final Point3 HERE = new Point3(4, 4, 1);
  private static final Barrier SCREEN =
      new Barrier("screen", "screen", 2.4, 1.5, 0.1, Octaves.filled(20), Octaves.filled(0.5));
  private static final Point3 THERE = new Point3(8, 5, 1);

  @Test
  void aMatrixCostsItsPathsItsBarriersAndTheCellsThatAreTold() {
    FloorPlan plan = floor(100, 100, 0);
    assertThat(FloorCost.bleedMs(plan, 0, false)).isCloseTo(3 + 300, within(1e-9));
    assertThat(FloorCost.bleedMs(plan, 1, false)).isCloseTo(7 * 3 + 300, within(1e-9));
    assertThat(FloorCost.bleedMs(plan, 0, true)).isCloseTo(3 + 1_700, within(1e-9));
    assertThat(FloorCost.bleedMs(floor(100, 100, 2), 0, false))
        .isCloseTo(3 + 300 + 18, within(1e-9));
  }

  @Test
  void aSearchCostsItsArrivalsInEachPatternAtEachPlaceAndAHundredFoldWhereItMoves() {
    FloorPlan plan = floor(64, 30, 0);
    assertThat(FloorCost.aimArrivals(plan, 0, 1, 0, false)).isEqualTo(30);
    assertThat(FloorCost.aimArrivals(plan, 1, 2, 3, false)).isEqualTo(30 * 7 * 2 * 4);
    assertThat(FloorCost.aimArrivals(plan, 0, 1, 0, true)).isEqualTo(3_000);
    assertThat(FloorCost.arrivalsMs(3_000)).isCloseTo(180, within(1e-9));
    // and the whole matrix, whose cells tell what makes the figures doubtful
    double matrixMs = 64 * 30 * (Octave.COUNT * 3e-5 + 0.006);
    assertThat(FloorCost.aimsMs(plan, 0, 3_000)).isCloseTo(180 + matrixMs, within(1e-9));
  }

  @Test
  void aDayCostsItsPartsAtEachSeatFromEachSource() {
    FloorPlan heard = floor(300, 300, 0);
    double matrixMs = 90_000 * (7 * Octave.COUNT * 3e-5 + 0.006);
    assertThat(FloorCost.exposureMs(heard, 1, 64)).isCloseTo(matrixMs + 2_304, within(1e-6));
  }

  @Test
  void theLargestFloorsThatAQuestionMayTellAreRefused() {
    FloorPlan most = floor(300, 300, 32);
    assertThat(FloorCost.bleedMs(most, 0, false)).isLessThan(CpuBudget.MOST_MS);
    assertThat(FloorCost.bleedMs(most, 6, false)).isGreaterThan(CpuBudget.MOST_MS);
    assertThat(FloorCost.bleedMs(floor(300, 300, 0), 0, true)).isGreaterThan(CpuBudget.MOST_MS);
    assertThat(FloorCost.exposureMs(most, 6, 1)).isGreaterThan(CpuBudget.MOST_MS);
    long arrivals = 64 * FloorCost.aimArrivals(floor(64, 30, 0), 0, 1, 0, true);
    assertThat(FloorCost.aimsMs(floor(64, 30, 0), 0, arrivals)).isGreaterThan(CpuBudget.MOST_MS);
  }

  private static FloorPlan floor(int microphones, int sources, int barriers) {
    return new FloorPlan(
        Floors.hall(80),
        false,
        Collections.nCopies(sources, Floors.source("s", 100, THERE)),
        Collections.nCopies(
            microphones, Floors.microphone("m", PatternName.CARDIOID, HERE, THERE, "s")),
        Collections.nCopies(barriers, new PlacedBarrier(SCREEN, 6, 4, 0)));
  }
}
