package org.standoff.floor;

import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Radiator;

/**
 * A source with its images, ready to be asked for the sound at a place. On the way of image k,
 * w·Q·((1 + cos θ)/2)^(Q−1)·(1 − ᾱ)^k·e^(−md)/(4π r²) arrives, r being the radiator's effective
 * distance; the directivity is that of {@link org.standoff.acoustics.Directivity}.
 */
final class SourceField {
  /** Below this the logarithm of a directivity is nothing: e^−700 is the least number there is. */
  private static final double LEAST_LOG = -700;

  private static final double LEAST_HALF = Math.exp(LEAST_LOG);

  private final Radiator radiator;
  private final double[] placeM;
  private final double[] facing;
  private final double[][] onAxis;
  private final int[] order;
  private final double[] exponent = new double[Octave.COUNT];
  private final double[] airPerM;
  private final boolean directional;
  private final double[] late = new double[Octave.COUNT];

  SourceField(FloorSource source, RoomField room) {
    radiator = source.radiator();
    airPerM = room.airPerM;
    int images = room.images.size();
    placeM = new double[3 * images];
    facing = new double[3 * images];
    order = new int[images];
    for (int image = 0; image < images; image++) {
      Images.Image one = room.images.get(image);
      Point3 place = one.place(source.position(), room.room.box());
      placeM[3 * image] = place.xM();
      placeM[3 * image + 1] = place.yM();
      placeM[3 * image + 2] = place.zM();
      System.arraycopy(one.facing(source.facing()), 0, facing, 3 * image, 3);
      order[image] = one.order();
    }
    boolean anyDirectional = false;
    onAxis = new double[room.reflected.length][Octave.COUNT];
    for (Octave octave : Octave.all()) {
      int i = octave.ordinal();
      double power = Level.powerRatio(source.powerDb().get(octave));
      double factor = source.directivity().factor(octave.midHz());
      exponent[i] = factor - 1;
      anyDirectional |= exponent[i] > 0;
      late[i] = power * room.latePerPower[i];
      for (int k = 0; k < onAxis.length; k++) {
        onAxis[k][i] = power * factor * room.reflected[k][i] / (4 * Math.PI);
      }
    }
    directional = anyDirectional;
  }

  int images() {
    return order.length;
  }

  double imageX(int image) {
    return placeM[3 * image];
  }

  double imageY(int image) {
    return placeM[3 * image + 1];
  }

  double imageZ(int image) {
    return placeM[3 * image + 2];
  }

  /** Late energy at an omnidirectional microphone. */
  double late(int octave) {
    return late[octave];
  }

  /** Cosine of the angle off the source's axis at which {@code image} radiates to a place. */
  double cosOffAxis(int image, double x, double y, double z, double distanceM) {
    int at = 3 * image;
    return ((x - placeM[at]) * facing[at]
            + (y - placeM[at + 1]) * facing[at + 1]
            + (z - placeM[at + 2]) * facing[at + 2])
        / distanceM;
  }

  /** Writes the energy that arrives from {@code image} into {@code energy}. */
  void arrive(int image, double x, double y, double z, double distanceM, double[] energy) {
    double logHalf = directional ? logHalf(cosOffAxis(image, x, y, z, distanceM)) : 0;
    double r = radiator.effectiveDistanceM(distanceM);
    double spread = 1 / (r * r);
    double[] strength = onAxis[order[image]];
    for (int i = 0; i < energy.length; i++) {
      energy[i] =
          strength[i] == 0
              ? 0
              : strength[i] * spread * Math.exp(exponent[i] * logHalf - airPerM[i] * distanceM);
    }
  }

  private static double logHalf(double cos) {
    return Math.log(Math.max((1 + cos) / 2, LEAST_HALF));
  }
}
