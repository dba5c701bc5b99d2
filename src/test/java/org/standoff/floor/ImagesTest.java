package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Reverberation;

class ImagesTest {
  private static final double SPEED_M_PER_S = 343.2;

  @Test
  void theFirstImagesAreTheMirrorsInSixWalls() {
    assertThat(Images.upTo(1)).hasSize(7);
    assertThat(Images.upTo(1).get(0)).isEqualTo(new Images.Image(0, 0, 0));
    Box box = new Box(5, 4, 3);
    Point3 place = new Point3(1, 1.5, 1.2);
    assertThat(new Images.Image(-1, 0, 0).place(place, box)).isEqualTo(new Point3(-1, 1.5, 1.2));
    assertThat(new Images.Image(1, 0, 0).place(place, box)).isEqualTo(new Point3(9, 1.5, 1.2));
    assertThat(new Images.Image(0, 2, 0).place(place, box)).isEqualTo(new Point3(1, 9.5, 1.2));
  }

  @Test
  void anImageFacesTheOtherWayInTheAxisOfItsMirror() {
    Direction right = new Direction(-90, 0);
    assertThat(new Images.Image(1, 0, 0).facing(right)[0]).isCloseTo(-1, within(1e-12));
    assertThat(new Images.Image(0, 1, 0).facing(right)[0]).isCloseTo(1, within(1e-12));
    assertThat(new Images.Image(2, 0, 0).facing(right)[0]).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
  void theirNumberIsKnownBeforeTheyAreMade(int order) {
    assertThat(Images.count(order)).isEqualTo(Images.upTo(order).size());
  }

  @Test
  void ordersThatCostTooMuchAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Images.upTo(7));
    assertThatIllegalArgumentException().isThrownBy(() -> Images.upTo(-1));
  }

  /**
   * An independent look at the box: the decay of the images' energy, by Schroeder's backward
   * integral from −5 to −25 dB, against Eyring. A box of even absorption is not quite diffuse, and
   * its tail lingers: the images decay no faster than Eyring and at most a quarter slower (derived
   * from the images; the well-known bias of the method in boxes).
   */
  @ParameterizedTest
  @CsvSource({"7, 6, 5, 0.1", "7, 6, 5, 0.2", "8, 6.5, 5.2, 0.15", "6, 6, 6, 0.3"})
  void theImagesDecayLikeEyringsRoom(double x, double y, double z, double meanAbsorption) {
    Box box = new Box(x, y, z);
    double eyringS =
        Reverberation.eyringS(box.volumeM3(), meanAbsorption * box.surfaceM2(), box.surfaceM2(), 0);
    assertThat(decayS(box, meanAbsorption, eyringS) / eyringS).isBetween(0.97, 1.25);
  }

  private static double decayS(Box box, double meanAbsorption, double eyringS) {
    Random random = new Random(51);
    double spanS = eyringS * 0.75;
    double[] energy = new double[300];
    for (int place = 0; place < 3; place++) {
      add(box, meanAbsorption, inside(box, random), inside(box, random), spanS, energy);
    }
    for (int i = energy.length - 2; i >= 0; i--) {
      energy[i] += energy[i + 1];
    }
    double from = firstBelow(energy, -5);
    double to = firstBelow(energy, -25);
    return 3 * (to - from) * spanS / energy.length;
  }

  private static void add(
      Box box, double absorption, Point3 source, Point3 mic, double spanS, double[] energy) {
    double reachM = spanS * SPEED_M_PER_S;
    int most = (int) Math.ceil(reachM / 5) + 1;
    for (int i = -most; i <= most; i++) {
      for (int j = -most; j <= most; j++) {
        for (int k = -most; k <= most; k++) {
          Images.Image image = new Images.Image(i, j, k);
          double metres = image.place(source, box).distanceToM(mic);
          int at = (int) (metres / reachM * energy.length);
          if (at < energy.length) {
            energy[at] += Math.pow(1 - absorption, image.order()) / (metres * metres);
          }
        }
      }
    }
  }

  private static double firstBelow(double[] decay, double db) {
    int i = 0;
    while (10 * Math.log10(decay[i] / decay[0]) > db) {
      i++;
    }
    return i;
  }

  private static Point3 inside(Box box, Random random) {
    return new Point3(
        1 + (box.lengthM() - 2) * random.nextDouble(),
        1 + (box.widthM() - 2) * random.nextDouble(),
        1 + (box.heightM() - 2) * random.nextDouble());
  }
}
