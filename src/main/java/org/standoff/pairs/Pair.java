package org.standoff.pairs;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.standoff.acoustics.Polar;

/**
 * Two or three capsules as they stand in a room.
 *
 * @param capsules left and right, or mid and side; a centre besides if there is one
 * @param matrix present exactly for mid and side
 * @param disc between left and right; both must then lie on the bar
 * @param rejectionCapDb deepest rejection that is believed, above 0 dB
 * @param place where they stand
 */
public record Pair(
    List<Capsule> capsules,
    Optional<MidSide> matrix,
    Optional<Disc> disc,
    double rejectionCapDb,
    PairPlace place) {

  /**
   * @throws IllegalArgumentException when the capsules don't make a pair
   */
  public Pair {
    capsules = List.copyOf(capsules);
    if (!(rejectionCapDb > 0 && Double.isFinite(rejectionCapDb))) {
      throw new IllegalArgumentException(
          "the rejection cap must be above 0 dB, not " + rejectionCapDb);
    }
    Map<Channel, Capsule> byChannel = new EnumMap<>(Channel.class);
    for (Capsule capsule : capsules) {
      if (byChannel.put(capsule.channel(), capsule) != null) {
        throw new IllegalArgumentException("two capsules feed " + capsule.channel().id());
      }
    }
    checkChannels(byChannel.keySet(), matrix.isPresent());
    if (disc.isPresent() && !capsules.stream().allMatch(Pair::liesOnBar)) {
      throw new IllegalArgumentException("capsules at a disc lie on its axis, one on each side");
    }
  }

  /** Without matrix or disc, with the usual rejection cap. */
  public static Pair of(List<Capsule> capsules, PairPlace place) {
    return new Pair(
        capsules, Optional.empty(), Optional.empty(), Polar.DEFAULT_REJECTION_CAP_DB, place);
  }

  /** The same capsules in another place. */
  public Pair at(PairPlace elsewhere) {
    return new Pair(capsules, matrix, disc, rejectionCapDb, elsewhere);
  }

  /** The capsule that feeds a channel. */
  public Optional<Capsule> capsule(Channel channel) {
    return capsules.stream().filter(capsule -> capsule.channel() == channel).findFirst();
  }

  private static void checkChannels(Set<Channel> channels, boolean matrixed) {
    Set<Channel> wanted =
        matrixed ? Set.of(Channel.MID, Channel.SIDE) : Set.of(Channel.LEFT, Channel.RIGHT);
    boolean others =
        channels.stream()
            .anyMatch(channel -> !wanted.contains(channel) && channel != Channel.CENTRE);
    if (others || !channels.containsAll(wanted) || (matrixed && channels.size() > 2)) {
      throw new IllegalArgumentException(
          "a pair is left and right, perhaps with a centre, or mid and side with a matrix; not "
              + channels);
    }
  }

  private static boolean liesOnBar(Capsule capsule) {
    boolean rightSide =
        capsule.channel() == Channel.LEFT
            ? capsule.position().xM() < 0
            : capsule.channel() == Channel.RIGHT && capsule.position().xM() > 0;
    return rightSide && capsule.position().yM() == 0 && capsule.position().zM() == 0;
  }
}
