package org.standoff.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;

/**
 * All that arrives at one place, before any pattern: what the aim search asks thousands of times.
 * Wanted is the direct sound of the wanted sources; their own room counts for neither side.
 */
final class AimField {
  private final FloorMicrophone microphone;
  private final List<double[]> directions = new ArrayList<>();
  private final List<double[]> energies = new ArrayList<>();
  private final List<Boolean> reflected = new ArrayList<>();
  private final double[] late = new double[Octave.COUNT];
  private final Map<FloorPattern, Ear> ears = new IdentityHashMap<>();
  private final List<double[]> wantedDirections = new ArrayList<>();
  private final List<double[]> wantedEnergies = new ArrayList<>();

  // The same in flat arrays, for patterns that are alike in all octaves.
  private final double[] unwantedXyz;
  private final double[] unwantedSums;
  private final double[] wantedXyz;
  private final double[] wantedSums;
  private final double lateSum;

  AimField(FloorField field, FloorMicrophone microphone, AimLimits limits) {
    this.microphone = microphone;
    List<FloorSource> sources = field.plan().sources();
    for (int index = 0; index < sources.size(); index++) {
      FloorSource source = sources.get(index);
      if (microphone.wants(source)) {
        addWanted(field, index);
      } else if (!microphone.wanted().isEmpty()) {
        addUnwanted(field, index, Level.powerRatio(limits.weightDb(source)));
      }
    }
    unwantedXyz = flat(directions);
    unwantedSums = energies.stream().mapToDouble(AimField::sum).toArray();
    wantedXyz = flat(wantedDirections);
    wantedSums = wantedEnergies.stream().mapToDouble(AimField::sum).toArray();
    lateSum = sum(late);
  }

  /** Level of the wanted direct sound on the axis of any pattern. */
  double wantedOnAxisDb() {
    return Level.ofPowerRatio(sum(wantedSums));
  }

  /** Where the wanted sound comes from. */
  List<Direction> wantedAims() {
    return wantedDirections.stream().map(to -> Direction.ofVector(to[0], to[1], to[2])).toList();
  }

  double wantedDb(FloorPattern pattern, Direction aim) {
    return Level.ofPowerRatio(
        heard(wantedDirections, wantedEnergies, wantedXyz, wantedSums, pattern, aim));
  }

  double unwantedDb(FloorPattern pattern, Direction aim) {
    return Level.ofPowerRatio(
        heard(directions, energies, unwantedXyz, unwantedSums, pattern, aim) + lateHeard(pattern));
  }

  double unwantedRoomDb(FloorPattern pattern, Direction aim) {
    Ear ear = ear(pattern, aim);
    double[] room = new double[Octave.COUNT];
    for (int i = 0; i < directions.size(); i++) {
      double[] to = directions.get(i);
      double cos = ear.cosOffAxis(to[0], to[1], to[2], 1);
      if (reflected.get(i) && ear.hears(cos)) {
        ear.hear(cos, energies.get(i), room);
      }
    }
    return Level.ofPowerRatio(sum(room) + lateHeard(pattern));
  }

  private void addWanted(FloorField field, int index) {
    double[] direct = new double[Octave.COUNT];
    double[] to = arrive(field, index, 0, direct);
    wantedDirections.add(to);
    wantedEnergies.add(direct);
  }

  private void addUnwanted(FloorField field, int index, double weight) {
    for (int image = 0; image < field.source(index).images(); image++) {
      double[] energy = new double[Octave.COUNT];
      directions.add(arrive(field, index, image, energy));
      for (int i = 0; i < energy.length; i++) {
        energy[i] *= weight;
      }
      energies.add(energy);
      reflected.add(image > 0);
    }
    for (int i = 0; i < late.length; i++) {
      late[i] += weight * field.source(index).late(i);
    }
  }

  private double[] arrive(FloorField field, int index, int image, double[] energy) {
    SourceField source = field.source(index);
    double x = microphone.position().xM();
    double y = microphone.position().yM();
    double z = microphone.position().zM();
    double dx = source.imageX(image) - x;
    double dy = source.imageY(image) - y;
    double dz = source.imageZ(image) - z;
    double distanceM = Math.sqrt(dx * dx + dy * dy + dz * dz);
    source.arrive(image, x, y, z, distanceM, energy);
    if (image == 0) {
      field.screen(field.plan().sources().get(index), microphone, energy);
    }
    return new double[] {dx / distanceM, dy / distanceM, dz / distanceM};
  }

  private double heard(
      List<double[]> from,
      List<double[]> arriving,
      double[] xyz,
      double[] sums,
      FloorPattern pattern,
      Direction aim) {
    Ear ear = ear(pattern, aim);
    if (pattern.omniPartPerOctave().isEmpty() && !pattern.polar().halfSpace()) {
      double total = 0;
      for (int i = 0; i < sums.length; i++) {
        double cos = ear.cosOffAxis(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2], 1);
        total += sums[i] * ear.energy(0, cos);
      }
      return total;
    }
    double[] octaves = new double[Octave.COUNT];
    for (int i = 0; i < sums.length; i++) {
      double[] to = from.get(i);
      double cos = ear.cosOffAxis(to[0], to[1], to[2], 1);
      boolean direct = arriving == wantedEnergies || !reflected.get(i);
      if (direct || ear.hears(cos)) {
        ear.hear(cos, arriving.get(i), octaves);
      }
    }
    return sum(octaves);
  }

  private double lateHeard(FloorPattern pattern) {
    if (pattern.omniPartPerOctave().isEmpty()) {
      return lateSum * pattern.polar().randomEnergyEfficiency();
    }
    double heard = 0;
    for (Octave octave : Octave.all()) {
      heard += late[octave.ordinal()] * pattern.in(octave).randomEnergyEfficiency();
    }
    return heard;
  }

  private Ear ear(FloorPattern pattern, Direction aim) {
    return ears.computeIfAbsent(pattern, one -> new Ear(one, aim, microphone.rejectionCapDb()))
        .aimed(aim);
  }

  private static double[] flat(List<double[]> directions) {
    return directions.stream().flatMapToDouble(Arrays::stream).toArray();
  }

  private static double sum(double[] energies) {
    double sum = 0;
    for (double energy : energies) {
      sum += energy;
    }
    return sum;
  }
}
