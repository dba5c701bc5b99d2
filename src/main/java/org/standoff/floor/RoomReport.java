package org.standoff.floor;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Reverberation;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.Validity;

/**
 * What a room does, before anybody stands in it.
 *
 * @param decays decay times per octave
 * @param schroederHz below it single modes rule
 * @param criticalDistances per pattern, on the axis, for an omnidirectional source
 * @param linings what some material would buy, each for itself
 * @param validity what makes the figures doubtful
 */
public record RoomReport(
    List<Decay> decays,
    double schroederHz,
    List<CriticalDistance> criticalDistances,
    List<LiningEffect> linings,
    List<Validity> validity) {

  /**
   * Decay times of one octave in s; see {@link Reverberation}.
   *
   * @param octave the octave
   * @param areaM2 equivalent absorption area, without added air
   * @param meanAbsorption A/S
   * @param sabineS Sabine, on the room's data as they stand
   * @param eyringS Eyring, the same
   * @param sabineWithAirS Sabine with 4mV of the air added
   * @param eyringWithAirS Eyring with 4mV of the air added
   */
  public record Decay(
      Octave octave,
      double areaM2,
      double meanAbsorption,
      double sabineS,
      double eyringS,
      double sabineWithAirS,
      double eyringWithAirS) {}

  /**
   * Where direct sound and the classical field are equal.
   *
   * @param pattern the microphone's pattern
   * @param octavesM per octave
   * @param midM for the mean absorption of 500 Hz and 1 kHz
   */
  public record CriticalDistance(PatternName pattern, Octaves octavesM, double midM) {}

  /**
   * What material would buy.
   *
   * @param lining the material
   * @param lateChangesDb change of the late field per octave, only direct sound apart; ≤ 0, 0 where
   *     there is none and −∞ where none is left
   * @param lateChangeDb the same for the mean absorption of 500 Hz and 1 kHz
   * @param decayS Sabine's decay then, for the same mean
   * @param criticalDistanceM of an omnidirectional pair then, for the same mean
   */
  public record LiningEffect(
      Lining lining,
      Octaves lateChangesDb,
      double lateChangeDb,
      double decayS,
      double criticalDistanceM) {}

  public RoomReport {
    decays = List.copyOf(decays);
    criticalDistances = List.copyOf(criticalDistances);
    linings = List.copyOf(linings);
    validity = List.copyOf(validity);
  }

  /** The report of {@code room}, with what each of {@code linings} would do to it. */
  public static RoomReport of(Room room, List<Lining> linings) {
    return new RoomReport(
        Octave.all().stream().map(octave -> decay(room, octave)).toList(),
        room.schroederHz(),
        Arrays.stream(PatternName.values()).map(pattern -> distance(room, pattern)).toList(),
        linings.stream().map(lining -> effect(room, lining)).toList(),
        room.validity(Octave.all().toArray(Octave[]::new)));
  }

  private static Decay decay(Room room, Octave octave) {
    return new Decay(
        octave,
        room.absorptionAreaM2(octave, false),
        room.meanAbsorption(octave),
        room.sabineS(octave),
        room.eyringS(octave),
        room.sabineS(octave, true),
        room.eyringS(octave, true));
  }

  private static CriticalDistance distance(Room room, PatternName pattern) {
    double factor = pattern.ideal().directivityFactor();
    return new CriticalDistance(
        pattern,
        perOctave(octave -> room.criticalDistanceM(octave, factor)),
        Reverberation.criticalDistanceM(room.midAbsorptionAreaM2(), factor));
  }

  private static LiningEffect effect(Room room, Lining lining) {
    Room lined = lining.in(room);
    SoundPower any = new SoundPower(0);
    return new LiningEffect(
        lining,
        perOctave(
            octave ->
                changeDb(room.lateLevelDb(any, octave, 0), lined.lateLevelDb(any, octave, 0))),
        changeDb(
            room.lateLevelDb(any, room.midAbsorptionAreaM2(), 0),
            lined.lateLevelDb(any, lined.midAbsorptionAreaM2(), 0)),
        Reverberation.sabineS(lined.volumeM3(), lined.midAbsorptionAreaM2()),
        Reverberation.criticalDistanceM(lined.midAbsorptionAreaM2(), 1));
  }

  /** A room that absorbs everything has no late field, and nothing can be taken from it. */
  private static double changeDb(double fromDb, double toDb) {
    return fromDb == Double.NEGATIVE_INFINITY ? 0 : toDb - fromDb;
  }

  private static Octaves perOctave(ToDoubleFunction<Octave> figure) {
    return Octaves.of(Octave.all().stream().mapToDouble(figure).toArray());
  }
}
