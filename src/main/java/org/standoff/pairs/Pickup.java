package org.standoff.pairs;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;

/**
 * What one channel hears at one point: a first-order response a + g·u to a wave from the direction
 * of the unit vector u. A capsule has a = A and g = B along its aim; a matrix of capsules in one
 * point is again of this form, so mid-side needs no laws of its own.
 *
 * @param channel left, right or centre
 * @param position in the pair's axes
 * @param omni a ≥ 0
 * @param gradient g as a vector (no unit)
 * @param halfSpace true on a boundary
 */
record Pickup(Channel channel, Point3 position, double omni, Point3 gradient, boolean halfSpace) {
  static Pickup of(Capsule capsule) {
    return new Pickup(
        capsule.channel(),
        capsule.position(),
        capsule.pattern().omniPart(),
        along(capsule.aim(), capsule.pattern().gradientPart()),
        capsule.pattern().halfSpace());
  }

  /** mid + gain·side, both in the place of mid. */
  static Pickup sum(Channel channel, Capsule mid, Capsule side, double gain) {
    Point3 front = along(mid.aim(), mid.pattern().gradientPart());
    Point3 across = along(side.aim(), gain * side.pattern().gradientPart());
    return new Pickup(
        channel,
        mid.position(),
        mid.pattern().omniPart() + gain * side.pattern().omniPart(),
        new Point3(front.xM() + across.xM(), front.yM() + across.yM(), front.zM() + across.zM()),
        false);
  }

  /** Response to a wave from the direction of the unit vector (x, y, z); its sign is polarity. */
  double response(double x, double y, double z) {
    return omni + gradient.xM() * x + gradient.yM() * y + gradient.zM() * z;
  }

  /** |g| */
  double gradientSize() {
    return Math.hypot(Math.hypot(gradient.xM(), gradient.yM()), gradient.zM());
  }

  /** Response on the axis, the greatest there is: |a| + |g|. */
  double greatest() {
    return Math.abs(omni) + gradientSize();
  }

  /** a² + g²/3, mean square of the response over the sphere. */
  double sphereMean() {
    return omni * omni + gradientSize() * gradientSize() / 3;
  }

  /** The pattern with 1 on its axis. */
  Polar pattern() {
    return new Polar(Math.abs(omni) / greatest(), halfSpace);
  }

  private static Point3 along(Direction aim, double size) {
    return new Point3(size * aim.x(), size * aim.y(), size * aim.z());
  }
}
