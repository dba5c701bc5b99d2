package org.standoff.pairs;

import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;

/**
 * One capsule in the pair's own axes: x right along the bar, y to the front, z up, origin in the
 * middle of the pair.
 *
 * @param channel what it feeds
 * @param position relative to the middle
 * @param aim where its axis points
 * @param pattern how it hears
 */
public record Capsule(Channel channel, Point3 position, Direction aim, Polar pattern) {
  public Capsule {
    if (!Double.isFinite(position.xM() + position.yM() + position.zM())) {
      throw new IllegalArgumentException("a capsule's position must be finite, not " + position);
    }
  }
}
