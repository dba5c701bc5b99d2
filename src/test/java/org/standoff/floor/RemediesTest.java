package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.fixture.Floors;

class RemediesTest {
  private static final Point3 HERE = new Point3(5, 4, 1.2);
  private static final Barrier GOBO =
      new Barrier("gobo", "gobo", 2.4, 1.8, 0.1, Octaves.filled(25), Octaves.filled(0.6));
  private static final Lining DRAPE = new Lining("drape", 60, Octaves.filled(0.6));
  private static final RemedyOptions ALL = RemedyOptions.USUAL.with(GOBO).with(DRAPE);

  @Test
  void whereTheRoomCarriesItNeitherAimNorBarrierIsOffered() {
    List<Remedy> remedies = remedies(Floors.hall(40), new Point3(12, 8, 1.2));
    assertThat(remedies)
        .extracting(Remedy::kind)
        .contains(RemedyKind.CLOSER, RemedyKind.LINING, RemedyKind.SOFTER)
        .doesNotContain(RemedyKind.RE_AIM, RemedyKind.BARRIER);
    assertThat(gainDb(remedies, RemedyKind.CLOSER)).isCloseTo(6, within(0.5));
    assertThat(gainDb(remedies, RemedyKind.SOFTER)).isCloseTo(6, within(1e-6));
    assertThat(gainDb(remedies, RemedyKind.LINING)).isBetween(2.0, 4.0);
  }

  @Test
  void whereDirectSoundCarriesItTheyAreAndMaterialIsNot() {
    List<Remedy> remedies = remedies(Floors.openAir(), new Point3(8, 4, 1.2));
    assertThat(remedies)
        .extracting(Remedy::kind)
        .contains(RemedyKind.RE_AIM, RemedyKind.BARRIER, RemedyKind.OTHER_PATTERN)
        .doesNotContain(RemedyKind.LINING);
    assertThat(gainDb(remedies, RemedyKind.BARRIER)).isGreaterThan(5);
    assertThat(remedies).isSortedAccordingTo((a, b) -> Double.compare(b.gainDb(), a.gainDb()));
  }

  @Test
  void aPromiseIsKeptWhenTheChangeIsMade() {
    FloorPlan plan = plan(Floors.hall(300), new Point3(8, 4, 1.2));
    BleedMatrix matrix = BleedMatrix.of(plan, 1);
    for (Remedy remedy : Remedies.of(matrix, 0, ALL)) {
      FloorPlan changed = remedy.microphone().map(other -> plan.with(List.of(other))).orElse(plan);
      FloorPlan built = remedy.barrier().map(changed::plus).orElse(changed);
      if (remedy.microphone().isPresent() || remedy.barrier().isPresent()) {
        MicrophoneBleed then = BleedMatrix.of(built, 1).bleed(0);
        assertThat(then.isolationDb().orElseThrow())
            .as(remedy.what())
            .isCloseTo(remedy.isolationDb(), within(1e-9));
        assertThat(remedy.gainDb())
            .isCloseTo(
                remedy.isolationDb() - matrix.bleed(0).isolationDb().orElseThrow(), within(1e-9));
      }
    }
  }

  @Test
  void aRoomMicrophoneNeedsNoRemedy() {
    FloorPlan plan =
        Floors.plan(
            Floors.hall(70),
            List.of(Floors.source("loud", 100, new Point3(8, 4, 1.2))),
            List.of(Floors.microphone("room", OMNI, HERE, new Point3(8, 4, 1.2))));
    assertThat(Remedies.of(BleedMatrix.of(plan, 1), 0, ALL)).isEmpty();
  }

  @Test
  void optionsThatCannotBeAreRefused() {
    AimLimits aim = AimLimits.anyDirection(1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RemedyOptions(aim, 1.5, 0.05, 6, Optional.empty(), Optional.empty()));
  }

  private static double gainDb(List<Remedy> remedies, RemedyKind kind) {
    return remedies.stream()
        .filter(remedy -> remedy.kind() == kind)
        .findFirst()
        .orElseThrow()
        .gainDb();
  }

  private static List<Remedy> remedies(Room room, Point3 loud) {
    return Remedies.of(BleedMatrix.of(plan(room, loud), 1), 0, ALL);
  }

  private static FloorPlan plan(Room room, Point3 loud) {
    FloorMicrophone mic =
        Floors.switchable(
            Floors.microphone("mic", CARDIOID, HERE, new Point3(5, 4.6, 1.2), "wanted"),
            HYPERCARDIOID);
    return Floors.plan(
        room,
        List.of(
            Floors.source("wanted", 85, new Point3(5, 4.6, 1.2)), Floors.source("loud", 100, loud)),
        List.of(mic));
  }
}
