package org.standoff.pairs;

import java.util.ArrayList;
import java.util.List;
import org.standoff.acoustics.LateField;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;

/**
 * Direct sound over late field in one channel of a pair; see {@link LateField} for the law, with
 * only the direct sound explicit (order 0).
 *
 * @param channel left, right or centre
 * @param octavesDb per octave in dB, finite: the pattern's rejection is capped, and past {@link
 *     #MOST_DB} there is no room to speak of
 * @param midDb for the mean absorption of 500 Hz and 1 kHz
 */
public record DirectToReverberant(Channel channel, Octaves octavesDb, double midDb) {
  /** Told where a room absorbs everything. */
  public static final double MOST_DB = 60;

  /**
   * For each channel.
   *
   * @param place where the source is, in the room
   * @param sourceFactor its directivity factor towards the pair, above 0; 1 for omnidirectional
   * @throws SourceOnCapsule when the source is on a capsule
   */
  public static List<DirectToReverberant> of(
      PairHearing hearing, Point3 place, Room room, double sourceFactor) {
    if (!(sourceFactor > 0 && Double.isFinite(sourceFactor))) {
      throw new IllegalArgumentException(
          "a directivity factor must be above 0, not " + sourceFactor);
    }
    StereoDifferences heard = hearing.differences(new SoundOrigin.InRoom(place));
    double middleM = hearing.pair().place().middle().distanceToM(place);
    List<DirectToReverberant> all = new ArrayList<>();
    for (Pickup pickup : hearing.pickups()) {
      Heard one = heardBy(pickup.channel(), heard);
      all.add(channel(pickup, one, middleM, room, sourceFactor));
    }
    return List.copyOf(all);
  }

  private static DirectToReverberant channel(
      Pickup pickup, Heard heard, double middleM, Room room, double sourceFactor) {
    // What the channel loses against its own axis at the distance of the middle of the pair.
    double offAxisDb = heard.levelDb() - Level.ofAmplitudeRatio(pickup.greatest());
    double fromM = Math.max(middleM, PairHearing.LEAST_DISTANCE_M);
    double[] octaves = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      octaves[octave.ordinal()] =
          db(pickup, offAxisDb, fromM, room.absorptionAreaM2(octave, false), room, sourceFactor);
    }
    double mid = db(pickup, offAxisDb, fromM, room.midAbsorptionAreaM2(), room, sourceFactor);
    return new DirectToReverberant(pickup.channel(), Octaves.of(octaves), mid);
  }

  private static double db(
      Pickup pickup,
      double offAxisDb,
      double fromM,
      double areaM2,
      Room room,
      double sourceFactor) {
    double onAxisDb =
        LateField.directToLateDb(
            sourceFactor, pickup.pattern(), 1, fromM, areaM2, room.surfaceM2(), 0);
    return Math.min(onAxisDb + offAxisDb, MOST_DB);
  }

  private static Heard heardBy(Channel channel, StereoDifferences heard) {
    return switch (channel) {
      case LEFT -> heard.left();
      case RIGHT -> heard.right();
      default -> heard.centre().orElseThrow();
    };
  }
}
