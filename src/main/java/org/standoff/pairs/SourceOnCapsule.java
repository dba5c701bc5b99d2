package org.standoff.pairs;

/** A source so near to a capsule that neither is a point any more. */
public final class SourceOnCapsule extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final Channel channel;
  private final double distanceM;

  SourceOnCapsule(Channel channel, double distanceM, double leastM) {
    super(
        "the source is %.4f m from the %s capsule; at least %.2f m are needed"
            .formatted(distanceM, channel.id(), leastM));
    this.channel = channel;
    this.distanceM = distanceM;
  }

  public Channel channel() {
    return channel;
  }

  public double distanceM() {
    return distanceM;
  }
}
