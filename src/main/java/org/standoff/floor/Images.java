package org.standoff.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * The images of places in the walls of a box (Allen and Berkley, JASA 65 (1979) 943). Image (i, j,
 * k) has been reflected |i| + |j| + |k| times.
 */
final class Images {
  /** More would cost without telling anything: the late field says the rest. */
  static final int HIGHEST_ORDER = 6;

  /**
   * One image.
   *
   * @param i reflections along x, signed
   * @param j along y
   * @param k along z
   */
  record Image(int i, int j, int k) {
    int order() {
      return Math.abs(i) + Math.abs(j) + Math.abs(k);
    }

    Point3 place(Point3 original, Box box) {
      return new Point3(
          mirrored(original.xM(), box.lengthM(), i),
          mirrored(original.yM(), box.widthM(), j),
          mirrored(original.zM(), box.heightM(), k));
    }

    /** Components of the direction as this image has it. */
    double[] facing(Direction original) {
      return new double[] {sign(i) * original.x(), sign(j) * original.y(), sign(k) * original.z()};
    }

    private static double mirrored(double at, double side, int times) {
      return times * side + (times % 2 == 0 ? at : side - at);
    }

    private static int sign(int times) {
      return times % 2 == 0 ? 1 : -1;
    }
  }

  private Images() {}

  /**
   * The original first, then its images by order.
   *
   * @param order 0 to {@link #HIGHEST_ORDER}
   */
  static List<Image> upTo(int order) {
    if (!(order >= 0 && order <= HIGHEST_ORDER)) {
      throw new IllegalArgumentException(
          "reflections are computed up to an order of 0 to " + HIGHEST_ORDER + ", not " + order);
    }
    List<Image> images = new ArrayList<>();
    for (int i = -order; i <= order; i++) {
      for (int j = -order; j <= order; j++) {
        for (int k = -order; k <= order; k++) {
          Image image = new Image(i, j, k);
          if (image.order() <= order) {
            images.add(image);
          }
        }
      }
    }
    images.sort(Comparator.comparingInt(Image::order));
    return List.copyOf(images);
  }

  /** Number of images up to {@code order}, the original included: 1, 7, 25, 63 … */
  static long count(int order) {
    long n = order;
    return (2 * n + 1) * (2 * n * n + 2 * n + 3) / 3;
  }
}
