package org.standoff.pairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Validity;

/**
 * A pair ready to be asked what it hears: exact ways from the source to each capsule, signed
 * first-order patterns, and for a plane wave the limit of both.
 *
 * <p>Level of a channel: 20 lg |p R/r| with p the pattern towards the source, r its way and R the
 * distance from the middle; lead (R − r)/c. Derived from geometry.
 */
public final class PairHearing {
  /** Nearer than this to a capsule a source is refused. */
  public static final double LEAST_DISTANCE_M = 0.01;

  private static final double ROUNDING = 1e-12;

  private final Pair pair;
  private final double speedMPerS;
  private final double leastShare;
  private final Pickup left;
  private final Pickup right;
  private final Optional<Pickup> centre;

  private PairHearing(Pair pair, double speedMPerS) {
    this.pair = pair;
    this.speedMPerS = speedMPerS;
    this.leastShare = Level.amplitudeRatio(-pair.rejectionCapDb());
    if (pair.matrix().isPresent()) {
      double gain = pair.matrix().get().sideGain();
      Capsule mid = pair.capsule(Channel.MID).orElseThrow();
      Capsule side = pair.capsule(Channel.SIDE).orElseThrow();
      this.left = Pickup.sum(Channel.LEFT, mid, side, gain);
      this.right = Pickup.sum(Channel.RIGHT, mid, side, -gain);
      this.centre = Optional.empty();
    } else {
      this.left = Pickup.of(pair.capsule(Channel.LEFT).orElseThrow());
      this.right = Pickup.of(pair.capsule(Channel.RIGHT).orElseThrow());
      this.centre = pair.capsule(Channel.CENTRE).map(Pickup::of);
    }
  }

  /** The pair in air of a given speed of sound. */
  public static PairHearing of(Pair pair, Air air) {
    return new PairHearing(pair, air.speedOfSoundMPerS());
  }

  public Pair pair() {
    return pair;
  }

  double speedMPerS() {
    return speedMPerS;
  }

  /** Left and right, and the centre if there is one. */
  List<Pickup> pickups() {
    List<Pickup> all = new ArrayList<>(List.of(left, right));
    centre.ifPresent(all::add);
    return all;
  }

  /**
   * What the channels make of a sound.
   *
   * @throws SourceOnCapsule when the source is within {@link #LEAST_DISTANCE_M} of a capsule, or in
   *     the middle of the pair
   */
  public StereoDifferences differences(SoundOrigin origin) {
    if (origin instanceof SoundOrigin.Far far) {
      return farDifferences(far.direction());
    }
    Point3 place = ownPlace(origin);
    for (Pickup pickup : pickups()) {
      double distanceM = pickup.position().distanceToM(place);
      if (distanceM < LEAST_DISTANCE_M) {
        throw new SourceOnCapsule(pickup.channel(), distanceM, LEAST_DISTANCE_M);
      }
    }
    return nearDifferences(place);
  }

  /**
   * As {@link #differences}, but a source on a capsule counts as {@link #LEAST_DISTANCE_M} away:
   * for searches that sweep a pair past its sources.
   */
  public StereoDifferences sweeping(SoundOrigin origin) {
    return origin instanceof SoundOrigin.Far far
        ? farDifferences(far.direction())
        : nearDifferences(ownPlace(origin));
  }

  /** A place in the pair's axes; its distance from a capsule counts as the least one at least. */
  StereoDifferences nearDifferences(Point3 place) {
    return StereoDifferences.of(
        near(left, place), near(right, place), centre.map(pickup -> near(pickup, place)));
  }

  StereoDifferences farDifferences(Direction direction) {
    Point3 unit = new Point3(direction.x(), direction.y(), direction.z());
    return StereoDifferences.of(
        far(left, unit), far(right, unit), centre.map(pickup -> far(pickup, unit)));
  }

  /** In the pair's horizontal plane; far away when {@code distanceM} is infinite. */
  StereoDifferences inPlane(double azimuthDeg, double distanceM) {
    Direction direction = new Direction(azimuthDeg, 0);
    return Double.isInfinite(distanceM)
        ? farDifferences(direction)
        : nearDifferences(new Point3(0, 0, 0).moved(direction, distanceM));
  }

  /** The place of a source that isn't far, in the pair's axes. */
  Point3 ownPlace(SoundOrigin origin) {
    return origin instanceof SoundOrigin.InRoom inRoom
        ? pair.place().toPair(inRoom.position())
        : fromPair((SoundOrigin.FromPair) origin);
  }

  /** What can't be trusted in this pair's differences. */
  public List<Validity> validity() {
    List<Validity> found = new ArrayList<>();
    if (pair.disc().isPresent()) {
      found.add(
          new Validity(
              "disc-level-not-computed",
              "the disc also makes a level difference, which only measurements give: images lie"
                  + " further out than told"));
    }
    if (centre.isPresent()) {
      found.add(
          new Validity(
              "centre-not-in-image",
              "images are those of left and right alone; the centre's lead holds the middle"));
    }
    if (hearsNoDifference()) {
      found.add(
          new Validity(
              "no-difference",
              "both capsules hear everything alike: all images lie in the middle"));
    }
    return List.copyOf(found);
  }

  private boolean hearsNoDifference() {
    return left.position().distanceToM(right.position()) < ROUNDING
        && Math.abs(left.omni() - right.omni()) < ROUNDING
        && left.gradient().distanceToM(right.gradient()) < ROUNDING;
  }

  private static Point3 fromPair(SoundOrigin.FromPair origin) {
    return new Point3(0, 0, 0).moved(origin.direction(), origin.distanceM());
  }

  private Heard near(Pickup pickup, Point3 place) {
    Point3 at = pickup.position();
    double middleM = Math.max(length(place), LEAST_DISTANCE_M);
    boolean shadowed = pair.disc().isPresent() && DiscPath.blocks(pair.disc().get(), at, place);
    Point3 from = shadowed ? DiscPath.edge(pair.disc().orElseThrow(), place) : place;
    double x = from.xM() - at.xM();
    double y = from.yM() - at.yM();
    double z = from.zM() - at.zM();
    double lastM = Math.max(Math.sqrt(x * x + y * y + z * z), LEAST_DISTANCE_M);
    double pathM = shadowed ? lastM + from.distanceToM(place) : lastM;
    double response = pickup.response(x / lastM, y / lastM, z / lastM);
    return heard(pickup, response, middleM / pathM, middleM - pathM, pathM, shadowed);
  }

  private Heard far(Pickup pickup, Point3 unit) {
    Point3 at = pickup.position();
    boolean shadowed = pair.disc().isPresent() && DiscPath.blocksFar(pair.disc().get(), at, unit);
    if (!shadowed) {
      double response = pickup.response(unit.xM(), unit.yM(), unit.zM());
      return heard(pickup, response, 1, dot(at, unit), 0, false);
    }
    Point3 edge = DiscPath.edge(pair.disc().orElseThrow(), unit);
    Point3 last = new Point3(edge.xM() - at.xM(), edge.yM() - at.yM(), edge.zM() - at.zM());
    double lastM = length(last);
    double response = pickup.response(last.xM() / lastM, last.yM() / lastM, last.zM() / lastM);
    return heard(pickup, response, 1, dot(edge, unit) - lastM, 0, true);
  }

  private Heard heard(
      Pickup pickup, double response, double spreading, double leadM, double pathM, boolean over) {
    double least = leastShare * pickup.greatest();
    boolean capped = Math.abs(response) < least;
    return new Heard(
        pickup.channel(),
        response * spreading,
        Level.ofAmplitudeRatio((capped ? least : Math.abs(response)) * spreading),
        1000 * leadM / speedMPerS,
        pathM,
        response < 0,
        capped,
        over);
  }

  private static double dot(Point3 a, Point3 b) {
    return a.xM() * b.xM() + a.yM() * b.yM() + a.zM() * b.zM();
  }

  private static double length(Point3 a) {
    return Math.sqrt(dot(a, a));
  }
}
