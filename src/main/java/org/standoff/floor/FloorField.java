package org.standoff.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/** A floor plan made ready for many questions: what each source sends to a place. */
final class FloorField {
  private static final double MOST_SCREENED =
      Level.powerRatio(-DiffractionLaw.DOUBLE_EDGE_LIMIT_DB);

  private final FloorPlan plan;
  private final RoomField room;
  private final List<SourceField> sources = new ArrayList<>();
  private final List<Screen> screens = new ArrayList<>();

  FloorField(FloorPlan plan, int order) {
    this.plan = plan;
    room = new RoomField(plan.furnishedRoom(), order);
    for (FloorSource source : plan.sources()) {
      sources.add(new SourceField(source, room));
    }
    for (PlacedBarrier barrier : plan.barriers()) {
      screens.add(new Screen(barrier, room.speedMPerS));
    }
  }

  FloorPlan plan() {
    return plan;
  }

  double speedMPerS() {
    return room.speedMPerS;
  }

  SourceField source(int index) {
    return sources.get(index);
  }

  /** Takes from direct sound what the barriers keep; two of them never more than ISO allows. */
  void screen(FloorSource source, FloorMicrophone microphone, double[] energy) {
    if (screens.isEmpty()) {
      return;
    }
    double[] free = energy.clone();
    for (Screen screen : screens) {
      screen.pass(source.position(), microphone.position(), energy);
    }
    for (int i = 0; i < energy.length; i++) {
      energy[i] = Math.max(energy[i], free[i] * MOST_SCREENED);
    }
  }

  /** One microphone hears one source. */
  BleedCell cell(FloorMicrophone microphone, Ear ear, int index) {
    SourceField field = sources.get(index);
    FloorSource source = plan.sources().get(index);
    double x = microphone.position().xM();
    double y = microphone.position().yM();
    double z = microphone.position().zM();
    double[] arriving = new double[Octave.COUNT];
    double[] direct = new double[Octave.COUNT];
    double[] reflections = new double[Octave.COUNT];
    double[] late = new double[Octave.COUNT];
    double directM = 0;
    double directCos = 1;
    for (int image = 0; image < field.images(); image++) {
      double dx = field.imageX(image) - x;
      double dy = field.imageY(image) - y;
      double dz = field.imageZ(image) - z;
      double distanceM = Math.sqrt(dx * dx + dy * dy + dz * dz);
      double cos = ear.cosOffAxis(dx, dy, dz, distanceM);
      field.arrive(image, x, y, z, distanceM, arriving);
      if (image == 0) {
        screen(source, microphone, arriving);
        ear.hear(cos, arriving, direct);
        directM = distanceM;
        directCos = cos;
      } else if (ear.hears(cos)) {
        ear.hear(cos, arriving, reflections);
      }
    }
    for (int i = 0; i < late.length; i++) {
      late[i] = field.late(i) * ear.efficiency(i);
    }
    return new BleedCell(
        microphone.id(),
        source.id(),
        directM,
        1000 * directM / room.speedMPerS,
        angleDeg(directCos),
        angleDeg(field.cosOffAxis(0, x, y, z, directM)),
        ear.pressure(Octave.HZ_1K.ordinal(), directCos) < 0,
        new OctaveEnergies(direct),
        new OctaveEnergies(reflections),
        new OctaveEnergies(late));
  }

  /** The parts of the direct sound of a cell, one by one. */
  DirectTerms terms(FloorMicrophone microphone, Ear ear, BleedCell cell, int index) {
    FloorSource source = plan.sources().get(index);
    double r = source.radiator().effectiveDistanceM(cell.pathM());
    double[] ones = new double[Octave.COUNT];
    Arrays.fill(ones, 1);
    screen(source, microphone, ones);
    double[] directivity = new double[Octave.COUNT];
    double[] pattern = new double[Octave.COUNT];
    double[] air = new double[Octave.COUNT];
    double cos = Math.cos(Math.toRadians(cell.microphoneAngleDeg()));
    for (Octave octave : Octave.all()) {
      int i = octave.ordinal();
      directivity[i] =
          source.directivity().indexDb(octave.midHz())
              + source.directivity().offAxisDb(octave.midHz(), cell.sourceAngleDeg());
      pattern[i] = Level.ofPowerRatio(ear.energy(i, cos));
      air[i] = -room.room.air().attenuationDbPerM(octave.midHz()) * cell.pathM();
    }
    return new DirectTerms(
        source.powerDb(),
        -Level.ofPowerRatio(4 * Math.PI * r * r),
        Octaves.of(directivity),
        Octaves.of(pattern),
        Octaves.of(air),
        Octaves.of(ones).map(Level::ofPowerRatio));
  }

  private static double angleDeg(double cos) {
    return Math.toDegrees(Math.acos(Math.min(Math.max(cos, -1), 1)));
  }
}
