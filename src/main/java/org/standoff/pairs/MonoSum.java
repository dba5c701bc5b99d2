package org.standoff.pairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * What is left of a sound when all channels are added: one signal met several times, so the sum is
 * coherent and signed, |Σ aᵢ e^(jωtᵢ)|. Derived. A centre channel enters with the gain of the
 * others.
 *
 * @param bandDb energy average over each octave (equal energy per hertz), re the same for a source
 *     straight ahead at the same distance
 * @param toneDb a tone at each exact midband, re the same straight ahead
 * @param foldDownDb energy average over each octave re what the channels hold when they are heard
 *     apart: 0 when all are equal, −3.0 when two are independent, lower when they cancel
 * @param notch the lowest dip below the highest octave's edge; empty for coincident channels
 */
public record MonoSum(Octaves bandDb, Octaves toneDb, Octaves foldDownDb, Optional<Notch> notch) {
  /** Deeper than any real notch; a lower sum is told as this. */
  public static final double FLOOR_DB = -60;

  private static final double SHORTEST_MS = 1e-9;

  /** The sum of what {@code hearing} makes of a sound. */
  public static MonoSum of(PairHearing hearing, SoundOrigin origin) {
    return of(hearing.differences(origin), ahead(hearing, origin));
  }

  /**
   * The sum in steps round the pair's horizontal plane, from −180° up to 180°.
   *
   * @param distanceM of the sources; infinite for plane waves
   * @param stepDeg above 0
   */
  public static List<MonoDirection> around(PairHearing hearing, double distanceM, double stepDeg) {
    if (!(stepDeg > 0 && distanceM > 0)) {
      throw new IllegalArgumentException(
          "step and distance must be above 0, not " + stepDeg + "°, " + distanceM + " m");
    }
    StereoDifferences ahead = hearing.inPlane(0, distanceM);
    List<MonoDirection> directions = new ArrayList<>();
    int steps = (int) Math.round(360 / stepDeg);
    for (int step = 0; step <= steps; step++) {
      double azimuthDeg = -180 + step * 360.0 / steps;
      directions.add(
          new MonoDirection(azimuthDeg, of(hearing.inPlane(azimuthDeg, distanceM), ahead)));
    }
    return List.copyOf(directions);
  }

  static MonoSum of(StereoDifferences heard, StereoDifferences ahead) {
    List<Heard> channels = channels(heard);
    List<Heard> front = channels(ahead);
    double apart =
        channels.size()
            * channels.stream().mapToDouble(one -> one.amplitude() * one.amplitude()).sum();
    double[] band = new double[Octave.COUNT];
    double[] tone = new double[Octave.COUNT];
    double[] fold = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      double bandEnergy = energy(channels, octave.lowerHz(), octave.upperHz());
      band[octave.ordinal()] =
          ratioDb(bandEnergy, energy(front, octave.lowerHz(), octave.upperHz()));
      tone[octave.ordinal()] =
          ratioDb(
              energy(channels, octave.midHz(), octave.midHz()),
              energy(front, octave.midHz(), octave.midHz()));
      fold[octave.ordinal()] = ratioDb(bandEnergy, apart);
    }
    return new MonoSum(Octaves.of(band), Octaves.of(tone), Octaves.of(fold), notch(heard));
  }

  /** Level of the sum of a tone of {@code hz} in dB, re the same straight ahead. */
  public static double toneDb(PairHearing hearing, SoundOrigin origin, double hz) {
    return ratioDb(
        energy(channels(hearing.differences(origin)), hz, hz),
        energy(channels(ahead(hearing, origin)), hz, hz));
  }

  /** The octave in which folding down costs most; the lowest of equals. */
  public Octave worstOctave() {
    Octave worst = Octave.HZ_31_5;
    for (Octave octave : Octave.all()) {
      if (foldDownDb.get(octave) < foldDownDb.get(worst)) {
        worst = octave;
      }
    }
    return worst;
  }

  /** Mean of |Σ aᵢ e^(jωtᵢ)|² between two frequencies, each pair of terms in closed form. */
  private static double energy(List<Heard> channels, double fromHz, double toHz) {
    double sum = 0;
    for (int one = 0; one < channels.size(); one++) {
      double a = channels.get(one).amplitude();
      sum += a * a;
      for (int other = 0; other < one; other++) {
        double seconds = (channels.get(one).leadMs() - channels.get(other).leadMs()) / 1000;
        double middle = Math.cos(Math.PI * (fromHz + toHz) * seconds);
        double half = Math.PI * (toHz - fromHz) * seconds;
        sum += 2 * a * channels.get(other).amplitude() * middle * SphericalBessel.j0(half);
      }
    }
    return Math.max(sum, 0);
  }

  private static StereoDifferences ahead(PairHearing hearing, SoundOrigin origin) {
    double distanceM =
        origin instanceof SoundOrigin.Far
            ? Double.POSITIVE_INFINITY
            : hearing.ownPlace(origin).distanceToM(PairPlace.ORIGIN.middle());
    return hearing.inPlane(0, Math.max(distanceM, PairHearing.LEAST_DISTANCE_M));
  }

  private static Optional<Notch> notch(StereoDifferences heard) {
    double left = Math.abs(heard.left().amplitude());
    double right = Math.abs(heard.right().amplitude());
    double timeMs = Math.abs(heard.timeMs());
    double hz = heard.oppositePolarity() ? 0 : 1000 / (2 * timeMs);
    if (timeMs < SHORTEST_MS || hz > Octave.HZ_16K.upperHz()) {
      return Optional.empty();
    }
    double depthDb = Level.ofAmplitudeRatio(Math.abs(left - right) / (left + right));
    return Optional.of(new Notch(hz, Math.max(depthDb, FLOOR_DB)));
  }

  private static List<Heard> channels(StereoDifferences heard) {
    List<Heard> channels = new ArrayList<>(List.of(heard.left(), heard.right()));
    heard.centre().ifPresent(channels::add);
    return channels;
  }

  private static double ratioDb(double energy, double reference) {
    double db = Level.ofPowerRatio(energy / reference);
    return db >= FLOOR_DB ? Math.min(db, -FLOOR_DB) : FLOOR_DB;
  }
}
