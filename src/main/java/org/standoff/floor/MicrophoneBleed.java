package org.standoff.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.Level;

/**
 * Wanted against unwanted in one microphone.
 *
 * @param microphoneId id of the microphone
 * @param wantedDirectDb direct sound of what it is there for; −∞ for a room microphone
 * @param wantedTotalDb the same with its room
 * @param unwantedDirectDb direct sound of all else
 * @param unwantedRoomDb reflections and late field of all else
 * @param unwantedDb all of all else; −∞ for a room microphone
 * @param isolationDb direct sound wanted over everything unwanted; empty for a room microphone and
 *     where nothing unwanted sounds
 * @param faderDb gain in the mix; added to any of the levels it gives the level there
 * @param offenders unwanted sources that sound, loudest first
 */
public record MicrophoneBleed(
    String microphoneId,
    double wantedDirectDb,
    double wantedTotalDb,
    double unwantedDirectDb,
    double unwantedRoomDb,
    double unwantedDb,
    OptionalDouble isolationDb,
    double faderDb,
    List<Offender> offenders) {

  public MicrophoneBleed {
    offenders = List.copyOf(offenders);
  }

  /** Whether the room carries most of what is unwanted. */
  public boolean roomDominates() {
    return unwantedRoomDb > unwantedDirectDb;
  }

  static MicrophoneBleed of(FloorPlan plan, FloorMicrophone microphone, List<BleedCell> row) {
    OctaveEnergies wantedDirect = OctaveEnergies.NONE;
    OctaveEnergies wantedTotal = OctaveEnergies.NONE;
    OctaveEnergies unwantedDirect = OctaveEnergies.NONE;
    OctaveEnergies unwantedRoom = OctaveEnergies.NONE;
    double nearestM = Double.POSITIVE_INFINITY;
    for (int i = 0; i < row.size(); i++) {
      BleedCell cell = row.get(i);
      if (microphone.wanted().isEmpty() || microphone.wants(plan.sources().get(i))) {
        wantedDirect = wantedDirect.plus(cell.direct());
        wantedTotal = wantedTotal.plus(cell.total());
        nearestM = Math.min(nearestM, cell.pathM());
      } else {
        unwantedDirect = unwantedDirect.plus(cell.direct());
        unwantedRoom = unwantedRoom.plus(cell.room());
      }
    }
    double unwantedDb = unwantedDirect.plus(unwantedRoom).overallDb();
    boolean none = unwantedDb == Double.NEGATIVE_INFINITY;
    return new MicrophoneBleed(
        microphone.id(),
        wantedDirect.overallDb(),
        wantedTotal.overallDb(),
        unwantedDirect.overallDb(),
        unwantedRoom.overallDb(),
        unwantedDb,
        none ? OptionalDouble.empty() : OptionalDouble.of(wantedDirect.overallDb() - unwantedDb),
        microphone.faderDb(),
        offenders(plan, microphone, row, wantedDirect.overallDb(), nearestM));
  }

  private static List<Offender> offenders(
      FloorPlan plan,
      FloorMicrophone microphone,
      List<BleedCell> row,
      double wantedDb,
      double nearestM) {
    List<Offender> offenders = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      BleedCell cell = row.get(i);
      double totalDb = cell.total().overallDb();
      boolean unwanted = !microphone.wanted().isEmpty() && !microphone.wants(plan.sources().get(i));
      if (unwanted && totalDb > Double.NEGATIVE_INFINITY) {
        double ratio = cell.pathM() / nearestM;
        offenders.add(
            new Offender(
                cell.sourceId(),
                totalDb,
                cell.direct().overallDb(),
                cell.room().overallDb(),
                wantedDb - totalDb,
                cell.directOverRoomDb() > 0,
                ratio,
                Level.ofAmplitudeRatio(ratio)));
      }
    }
    offenders.sort(Comparator.comparingDouble(Offender::totalDb).reversed());
    return offenders;
  }
}
