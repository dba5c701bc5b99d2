package org.standoff.floor.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.fixture.Floors;
import org.standoff.floor.Barrier;
import org.standoff.floor.BleedCell;
import org.standoff.floor.BleedMatrix;
import org.standoff.floor.DirectTerms;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.FloorSource;
import org.standoff.floor.PlacedBarrier;

class BleedLawsTest {
  private static final Directivity BEAMED = new Directivity(1, 3, 7, 11);
  private static final Barrier GOBO =
      new Barrier("gobo", "gobo", 2.4, 1.5, 0.1, Octaves.filled(20), Octaves.filled(0.5));

  @Property(seed = "41", tries = 200)
  void anOmniSourceAndAnOmniMicrophoneMayChangePlaces(
      @ForAll Random random, @ForAll @IntRange(min = 0, max = 3) int order) {
    Point3 here = anywhere(random);
    Point3 there = anywhere(random);
    PlacedBarrier barrier = PlacedBarrier.across(GOBO, here, there, 0.5);
    double forth = exchange(here, there, order, barrier);
    double back = exchange(there, here, order, barrier);
    assertThat(forth).isCloseTo(back, within(1e-9));
  }

  @Property(seed = "42", tries = 100)
  void theDirectSoundInTheOpenIsTheClosedForm(@ForAll Random random) {
    Point3 here = anywhere(random);
    Point3 there = anywhere(random);
    BleedCell cell =
        BleedMatrix.of(
                Floors.plan(
                    Floors.openAir(),
                    List.of(source(random, "one", there).turned(there.directionTo(here))),
                    List.of(Floors.microphone("mic", OMNI, here, there, "one"))),
                3)
            .cell(0, 0);
    FloorSource source = source(random, "one", there);
    for (Octave octave : Octave.all()) {
      double metres = here.distanceToM(there);
      double expected =
          90
              + BEAMED.indexDb(octave.midHz())
              - 10 * Math.log10(4 * Math.PI * metres * metres)
              - Floors.openAir().air().attenuationDbPerM(octave.midHz()) * metres;
      assertThat(source.powerDb().get(octave)).isEqualTo(90);
      assertThat(cell.total().db(octave)).isCloseTo(expected, within(1e-9));
    }
  }

  @Property(seed = "43", tries = 100)
  void thePartsOfTheDirectSoundAddToItsLevel(@ForAll Random random) {
    FloorPlan plan = plan(random, 2, 2);
    PlacedBarrier barrier =
        PlacedBarrier.across(
            GOBO, plan.microphones().get(0).position(), plan.sources().get(0).position(), 0.5);
    FloorPlan screened = plan.plus(barrier);
    Assume.that(screened.faults().isEmpty());
    BleedMatrix matrix = BleedMatrix.of(screened, 1);
    DirectTerms terms = matrix.terms(0, 0);
    for (Octave octave : Octave.all()) {
      assertThat(terms.levelDb(octave))
          .isCloseTo(matrix.cell(0, 0).direct().db(octave), within(1e-6));
      assertThat(terms.barrierDb().get(octave)).isLessThanOrEqualTo(0);
      assertThat(terms.patternDb().get(octave)).isBetween(-20.0 - 1e-9, 1e-9);
    }
  }

  @Property(seed = "44", tries = 60)
  void sourcesAddAsEnergyAndDoNotKnowOfEachOther(@ForAll Random random) {
    FloorPlan plan = plan(random, 4, 2);
    BleedMatrix together = BleedMatrix.of(plan, 1);
    for (int microphone = 0; microphone < 2; microphone++) {
      double[] alone = new double[4];
      double[] unwanted = new double[3];
      for (int source = 0; source < 4; source++) {
        FloorPlan solo =
            new FloorPlan(
                plan.room(),
                false,
                List.of(plan.sources().get(source)),
                List.of(wanting(plan.microphones().get(microphone))),
                List.of());
        alone[source] = BleedMatrix.of(solo, 1).cell(0, 0).total().overallDb();
        assertThat(together.cell(microphone, source).total().overallDb())
            .isCloseTo(alone[source], within(1e-9));
        if (source > 0) {
          unwanted[source - 1] = alone[source];
        }
      }
      assertThat(together.bleed(microphone).unwantedDb())
          .isCloseTo(Level.energySum(unwanted), within(1e-9));
    }
  }

  @Property(seed = "45", tries = 60)
  void aMirroredFloorHasAMirroredMatrix(@ForAll Random random) {
    FloorPlan plan = plan(random, 3, 3);
    FloorPlan screened = plan.plus(new PlacedBarrier(GOBO, 6, 4, 35));
    Assume.that(screened.faults().isEmpty());
    BleedMatrix one = BleedMatrix.of(screened, 2);
    FloorPlan mirrored =
        new FloorPlan(
            plan.room(),
            false,
            plan.sources().stream()
                .map(source -> source.at(east(source.position())).turned(east(source.facing())))
                .toList(),
            plan.microphones().stream()
                .map(mic -> mic.at(east(mic.position())).aimed(east(mic.aim())))
                .toList(),
            List.of(new PlacedBarrier(GOBO, Floors.HALL.lengthM() - 6, 4, -35)));
    BleedMatrix other = BleedMatrix.of(mirrored, 2);
    for (int microphone = 0; microphone < 3; microphone++) {
      for (int source = 0; source < 3; source++) {
        for (Octave octave : Octave.all()) {
          assertThat(one.cell(microphone, source).total().db(octave))
              .isCloseTo(other.cell(microphone, source).total().db(octave), within(1e-9));
          assertThat(one.cell(microphone, source).direct().db(octave))
              .isCloseTo(other.cell(microphone, source).direct().db(octave), within(1e-6));
        }
      }
    }
  }

  @Test
  void aNullOnTheOnlyNeighbourLeavesReflectionsAndTheLateField() {
    Point3 neighbour = new Point3(9, 4, 1.2);
    Point3 here = new Point3(5, 4, 1.2);
    FloorMicrophone eight =
        Floors.uncapped(
            Floors.microphone("eight", FIGURE_8, here, new Point3(5, 8, 1.2), "wanted"));
    BleedCell cell =
        BleedMatrix.of(
                Floors.plan(
                    Floors.hall(70),
                    List.of(
                        Floors.source("wanted", 80, new Point3(5, 5, 1.2)),
                        Floors.source("neighbour", 100, neighbour)),
                    List.of(eight)),
                2)
            .cell(0, 1);
    assertThat(cell.direct().overallDb()).isLessThan(-200);
    assertThat(cell.reflections().overallDb()).isGreaterThan(50);
    assertThat(cell.total().overallDb()).isCloseTo(cell.room().overallDb(), within(1e-9));
  }

  @Property(seed = "46", tries = 300)
  void aBarrierNeverRaisesTheDirectSound(@ForAll Random random) {
    FloorPlan plan = plan(random, 1, 1);
    PlacedBarrier barrier =
        new PlacedBarrier(
            GOBO,
            1 + 12 * random.nextDouble(),
            1 + 7 * random.nextDouble(),
            360 * random.nextDouble());
    FloorPlan behind = plan.plus(barrier);
    if (behind.faults().isEmpty()) {
      BleedCell free = BleedMatrix.of(plan, 1).cell(0, 0);
      BleedCell screened = BleedMatrix.of(behind, 1).cell(0, 0);
      for (Octave octave : Octave.all()) {
        assertThat(screened.direct().db(octave)).isLessThanOrEqualTo(free.direct().db(octave));
        assertThat(screened.late().db(octave)).isLessThan(free.late().db(octave));
      }
    }
  }

  @Property(seed = "47", tries = 100)
  void turningAPlayerChangesNothingButDirectivity(@ForAll Random random) {
    FloorPlan plan = plan(random, 1, 1);
    FloorSource turned = plan.sources().get(0).turned(direction(random));
    FloorPlan after =
        new FloorPlan(plan.room(), false, List.of(turned), plan.microphones(), List.of());
    BleedCell one = BleedMatrix.of(plan, 1).cell(0, 0);
    BleedCell other = BleedMatrix.of(after, 1).cell(0, 0);
    assertThat(one.arrivalMs()).isEqualTo(other.arrivalMs());
    for (Octave octave : Octave.all()) {
      assertThat(one.late().db(octave)).isEqualTo(other.late().db(octave));
      double hz = octave.midHz();
      assertThat(other.direct().db(octave) - one.direct().db(octave))
          .isCloseTo(
              BEAMED.offAxisDb(hz, other.sourceAngleDeg())
                  - BEAMED.offAxisDb(hz, one.sourceAngleDeg()),
              within(1e-5));
    }
  }

  /**
   * Direct sound, images to order n and the late field after them hardly depend on n. The bounds
   * are derived from the images themselves: the largest step met among 20 000 pairs of places, 1 m
   * or more from walls and from each other, was 0.94, 1.17 and 1.36 dB.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 1.0", "0.15, 1.2", "0.25, 1.4"})
  void theTotalHardlyDependsOnTheOrder(double meanAbsorption, double singlePlaceDb) {
    Random random = new Random(48);
    double[] meanDb = new double[BleedMatrix.HIGHEST_ORDER + 1];
    int places = 40;
    for (int place = 0; place < places; place++) {
      Point3 here = awayFromWalls(random);
      Point3 there = awayFromWalls(random);
      while (here.distanceToM(there) < 1) {
        there = awayFromWalls(random);
      }
      double directOnly = low(here, there, meanAbsorption, 0);
      for (int order = 1; order < meanDb.length; order++) {
        double difference = low(here, there, meanAbsorption, order) - directOnly;
        assertThat(difference).isCloseTo(0, within(singlePlaceDb));
        meanDb[order] += difference / places;
      }
    }
    for (double mean : meanDb) {
      assertThat(mean).isCloseTo(0, within(0.3));
    }
  }

  /** In the lowest octave, where the air takes nothing. */
  private static double low(Point3 here, Point3 there, double meanAbsorption, int order) {
    FloorSource source =
        Floors.source("one", Floors.only(Octave.HZ_63, 100), there, Directivity.OMNI);
    FloorMicrophone microphone = Floors.microphone("mic", OMNI, here, there, "one");
    return BleedMatrix.of(
            Floors.plan(Floors.evenHall(meanAbsorption), List.of(source), List.of(microphone)),
            order)
        .cell(0, 0)
        .total()
        .overallDb();
  }

  private static double exchange(Point3 mic, Point3 source, int order, PlacedBarrier barrier) {
    FloorPlan plan =
        Floors.plan(
            Floors.hall(70),
            List.of(Floors.source("one", 100, source)),
            List.of(Floors.microphone("mic", OMNI, mic, source, "one")),
            barrier);
    Assume.that(plan.faults().isEmpty());
    return BleedMatrix.of(plan, order).cell(0, 0).total().overallDb();
  }

  private static FloorPlan plan(Random random, int sources, int microphones) {
    List<FloorSource> playing = new ArrayList<>();
    for (int i = 0; i < sources; i++) {
      playing.add(source(random, "s" + i, anywhere(random)));
    }
    List<FloorMicrophone> standing = new ArrayList<>();
    for (int i = 0; i < microphones; i++) {
      PatternName pattern = PatternName.values()[random.nextInt(PatternName.values().length - 1)];
      standing.add(Floors.microphone("m" + i, pattern, anywhere(random), anywhere(random), "s0"));
    }
    Room hall = Floors.hall(40 + 60 * random.nextDouble());
    FloorPlan plan = Floors.plan(hall, playing, standing);
    return plan.faults().isEmpty() ? plan : plan(random, sources, microphones);
  }

  private static FloorSource source(Random random, String id, Point3 at) {
    FloorSource source = Floors.source(id, Octaves.filled(90), at, BEAMED);
    return source.turned(direction(random));
  }

  private static FloorMicrophone wanting(FloorMicrophone microphone) {
    return new FloorMicrophone(
        microphone.id(),
        microphone.title(),
        microphone.position(),
        microphone.aim(),
        microphone.pattern(),
        List.of(),
        microphone.rejectionCapDb(),
        0,
        Set.of(),
        microphone.side());
  }

  private static Direction direction(Random random) {
    return new Direction(360 * random.nextDouble() - 180, 160 * random.nextDouble() - 80);
  }

  private static Point3 anywhere(Random random) {
    return new Point3(
        0.3 + 13.4 * random.nextDouble(),
        0.3 + 8.4 * random.nextDouble(),
        0.3 + 4.6 * random.nextDouble());
  }

  private static Point3 awayFromWalls(Random random) {
    return new Point3(
        1 + 12 * random.nextDouble(), 1 + 7 * random.nextDouble(), 1 + 3.2 * random.nextDouble());
  }

  private static Point3 east(Point3 place) {
    return new Point3(Floors.HALL.lengthM() - place.xM(), place.yM(), place.zM());
  }

  private static Direction east(Direction direction) {
    return new Direction(-direction.azimuthDeg(), direction.elevationDeg());
  }
}
